/**
 * Rules of structure that an item and a manifest must keep, from memory of QTI 3.0: which elements may stand where, in
 * which order, with which attributes; identifiers are NCNames, each once, and what refers to one finds it. The
 * published schema itself is not at hand, so this is no claim that items are valid by it.
 */
const NC_NAME = /^[A-Za-z_][\w.-]*$/;

interface Rule {
  readonly needs: readonly string[];
  readonly may?: readonly string[];
  /** Children allowed; 'text' for letters. */
  readonly holds: readonly string[];
}

const FLOW = [
  'p',
  'div',
  'table',
  'qti-choice-interaction',
  'qti-order-interaction',
  'qti-match-interaction',
];
const INLINE = ['text', 'strong', 'img', 'qti-text-entry-interaction', 'qti-inline-choice-interaction'];
const EXPRESSIONS = [
  'qti-and',
  'qti-or',
  'qti-match',
  'qti-member',
  'qti-equal',
  'qti-is-null',
  'qti-variable',
  'qti-base-value',
  'qti-multiple',
  'qti-ordered',
  'qti-index',
];
const container: Rule = { needs: [], holds: EXPRESSIONS };

const RULES: Readonly<Record<string, Rule>> = {
  'qti-assessment-item': {
    needs: ['identifier', 'title', 'adaptive', 'time-dependent'],
    may: ['xmlns', 'xmlns:xsi', 'xsi:schemaLocation', 'xml:lang', 'tool-name'],
    holds: ['qti-response-declaration', 'qti-outcome-declaration', 'qti-item-body', 'qti-response-processing', 'qti-modal-feedback'],
  },
  'qti-response-declaration': { needs: ['identifier', 'cardinality', 'base-type'], holds: ['qti-correct-response'] },
  'qti-correct-response': { needs: [], holds: ['qti-value'] },
  'qti-default-value': { needs: [], holds: ['qti-value'] },
  'qti-value': { needs: [], holds: ['text'] },
  'qti-outcome-declaration': { needs: ['identifier', 'cardinality', 'base-type'], may: ['normal-minimum', 'normal-maximum'], holds: ['qti-default-value'] },
  'qti-item-body': { needs: [], holds: FLOW },
  'qti-content-body': { needs: [], holds: FLOW },
  'qti-prompt': { needs: [], holds: ['text'] },
  'qti-choice-interaction': { needs: ['response-identifier', 'max-choices', 'shuffle'], holds: ['qti-prompt', 'qti-simple-choice'] },
  'qti-order-interaction': { needs: ['response-identifier', 'shuffle'], may: ['orientation'], holds: ['qti-prompt', 'qti-simple-choice'] },
  'qti-match-interaction': { needs: ['response-identifier', 'max-associations', 'shuffle'], holds: ['qti-prompt', 'qti-simple-match-set'] },
  'qti-simple-match-set': { needs: [], holds: ['qti-simple-associable-choice'] },
  'qti-simple-associable-choice': { needs: ['identifier', 'match-max'], holds: ['text'] },
  'qti-simple-choice': { needs: ['identifier'], holds: ['text'] },
  'qti-text-entry-interaction': { needs: ['response-identifier'], may: ['expected-length'], holds: [] },
  'qti-inline-choice-interaction': { needs: ['response-identifier', 'shuffle'], holds: ['qti-inline-choice'] },
  'qti-inline-choice': { needs: ['identifier'], holds: ['text'] },
  'qti-response-processing': { needs: [], holds: ['qti-response-condition'] },
  'qti-response-condition': { needs: [], holds: ['qti-response-if', 'qti-response-else-if', 'qti-response-else'] },
  'qti-response-if': { needs: [], holds: [...EXPRESSIONS, 'qti-set-outcome-value'] },
  'qti-response-else-if': { needs: [], holds: [...EXPRESSIONS, 'qti-set-outcome-value'] },
  'qti-response-else': { needs: [], holds: ['qti-set-outcome-value'] },
  'qti-set-outcome-value': { needs: ['identifier'], holds: EXPRESSIONS },
  'qti-and': container,
  'qti-or': container,
  'qti-match': container,
  'qti-member': container,
  'qti-multiple': container,
  'qti-ordered': container,
  'qti-is-null': container,
  'qti-index': { needs: ['n'], holds: EXPRESSIONS },
  'qti-equal': { needs: ['tolerance-mode', 'tolerance'], holds: EXPRESSIONS },
  'qti-variable': { needs: ['identifier'], holds: [] },
  'qti-base-value': { needs: ['base-type'], holds: ['text'] },
  'qti-modal-feedback': { needs: ['outcome-identifier', 'identifier', 'show-hide'], holds: ['qti-content-body'] },
  div: { needs: [], may: ['data-slip-up'], holds: [...FLOW, ...INLINE] },
  p: { needs: [], holds: INLINE },
  strong: { needs: [], holds: ['text'] },
  img: { needs: ['src', 'alt'], holds: [] },
  table: { needs: [], holds: ['thead', 'tbody'] },
  thead: { needs: [], holds: ['tr'] },
  tbody: { needs: [], holds: ['tr'] },
  tr: { needs: [], holds: ['th', 'td'] },
  th: { needs: [], may: ['scope'], holds: INLINE },
  td: { needs: [], holds: INLINE },
  manifest: { needs: ['identifier'], may: ['xmlns'], holds: ['metadata', 'organizations', 'resources'] },
  metadata: { needs: [], holds: ['schema', 'schemaversion'] },
  schema: { needs: [], holds: ['text'] },
  schemaversion: { needs: [], holds: ['text'] },
  organizations: { needs: [], holds: [] },
  resources: { needs: [], holds: ['resource'] },
  resource: { needs: ['identifier', 'type', 'href'], holds: ['file'] },
  file: { needs: ['href'], holds: [] },
}; // biome-ignore format: a table of rules

/** Elements whose children must come in the order of the rule. */
const IN_ORDER = [
  'qti-assessment-item',
  'qti-response-condition',
  'qti-choice-interaction',
  'qti-match-interaction',
  'table',
  'manifest',
  'metadata',
];

/** Everything that breaks a rule of structure. */
export function faultsOf(root: Element): string[] {
  const faults: string[] = [];
  const walk = (element: Element) => {
    const rule = RULES[element.localName];
    if (!rule) {
      faults.push(`${element.localName} is not known`);
      return;
    }
    for (const name of rule.needs)
      if (!element.hasAttribute(name)) faults.push(`${element.localName} lacks ${name}`);
    for (const { name } of element.attributes)
      if (![...rule.needs, ...(rule.may ?? [])].includes(name))
        faults.push(`${element.localName} may not have ${name}`);
    for (const node of element.childNodes) {
      const name = node.nodeType === 1 ? (node as Element).localName : 'text';
      if (!rule.holds.includes(name) && !(name === 'text' && node.textContent?.trim() === ''))
        faults.push(`${element.localName} may not hold ${name}`);
    }
    if (IN_ORDER.includes(element.localName)) {
      const places = [...element.children].map((child) => rule.holds.indexOf(child.localName));
      if (places.some((place, index) => index > 0 && place < places[index - 1]!))
        faults.push(`${element.localName} is out of order`);
    }
    for (const child of element.children) walk(child);
  };
  walk(root);
  const ids = (selector: string, attribute = 'identifier') =>
    [...root.querySelectorAll(selector)].map((own) => own.getAttribute(attribute)!);
  for (const id of [root.getAttribute('identifier')!, ...ids('[identifier]')])
    if (!NC_NAME.test(id)) faults.push(`"${id}" is no NCName`);
  const once = (names: readonly string[]) => {
    for (const name of new Set(names))
      if (names.filter((other) => other === name).length > 1) faults.push(`"${name}" is there twice`);
  };
  const responses = ids('qti-response-declaration');
  once(responses);
  once(ids('qti-modal-feedback'));
  once(ids('qti-simple-choice, qti-simple-associable-choice'));
  once(ids('resource'));
  const answered = ids('[response-identifier]', 'response-identifier');
  for (const id of answered) if (!responses.includes(id)) faults.push(`no response "${id}" is declared`);
  for (const id of responses) if (!answered.includes(id)) faults.push(`nothing answers "${id}"`);
  for (const id of ids('qti-variable')) if (!responses.includes(id)) faults.push(`no variable "${id}"`);
  const outcomes = ids('qti-outcome-declaration');
  for (const id of ids('qti-set-outcome-value'))
    if (!outcomes.includes(id)) faults.push(`no outcome "${id}"`);
  for (const id of ids('qti-modal-feedback', 'outcome-identifier'))
    if (!outcomes.includes(id)) faults.push(`no outcome "${id}"`);
  return faults;
}
