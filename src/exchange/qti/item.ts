/**
 * One question as a QTI 3.0 assessment item: frozen as its seed made it, no template variables. It scores 1 for
 * every right answer and 0 for all else; a wrong answer that a slip-up explains shows that slip-up's sentence.
 * Cautions stand above the question. Words come from the caller's speaker.
 */

import { sameAnswer } from '../../core/questions/judge.ts';
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';
import type { Lure, Question } from '../../core/questions/question.ts';
import { el, writeXml, type XmlElement, type XmlNode } from '../xml.ts';
import { interactionFor } from './interaction.ts';
import { itemName } from './names.ts';
import { conditionFor, type Declared, declaredFor, precedenceCondition } from './response.ts';

export type Speak = (phrase: Phrase) => string;

/** What stands above an answer: an image file of the package, a table, or sentences. */
export type Picture =
  | { readonly kind: 'image'; readonly file: string; readonly alt: string }
  | {
      readonly kind: 'table';
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'text'; readonly lines: readonly string[] };

const NAMESPACE = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
const SCHEMA = 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd';
const FEEDBACK = 'FEEDBACK';

function pictureOf(picture: Picture): XmlElement {
  switch (picture.kind) {
    case 'image':
      return el('div', {}, el('img', { src: picture.file, alt: picture.alt }));
    case 'text':
      return el('div', {}, ...picture.lines.map((line) => el('p', {}, line)));
    case 'table':
      return el(
        'table',
        {},
        el('thead', {}, el('tr', {}, ...picture.columns.map((title) => el('th', { scope: 'col' }, title)))),
        el(
          'tbody',
          {},
          ...picture.rows.map(([head = '', ...cells]) =>
            el('tr', {}, el('th', { scope: 'row' }, head), ...cells.map((cell) => el('td', {}, cell))),
          ),
        ),
      );
  }
}

const responseDeclaration = ({ identifier, cardinality, baseType, values }: Declared) =>
  el(
    'qti-response-declaration',
    { identifier, cardinality, 'base-type': baseType },
    ...(values.length === 0
      ? []
      : [el('qti-correct-response', {}, ...values.map((value) => el('qti-value', {}, value)))]),
  );

const setOutcome = (identifier: string, type: string, value: string) =>
  el('qti-set-outcome-value', { identifier }, el('qti-base-value', { 'base-type': type }, value));

/** Lures that the same answer shows, together; in their own order. */
function feedbacks({ space, lures }: Question): Lure[][] {
  const groups: Lure[][] = [];
  for (const lure of lures) {
    const group = groups.find(([first]) => sameAnswer(space, first!.answer, lure.answer));
    if (group) group.push(lure);
    else groups.push([lure]);
  }
  return groups;
}

/** Whether QTI can say which answers are right: likes and free orders together it cannot. */
export const isExportable = ({ space, accepts }: Question): boolean =>
  !(accepts && space.form === 'order' && (space.alike?.length ?? 0) > 0);

/** The item's XML. Throws for a question that is not exportable. */
export function writeItem(
  question: Question,
  picture: Picture | null,
  speak: Speak,
  language: string,
): string {
  if (!isExportable(question)) throw new Error(`no QTI for ${itemName(question)}`);
  const { space, answers, accepts, explanation } = question;
  const groups = feedbacks(question);
  const rights = answers.map((answer) => conditionFor(space, answer));
  if (accepts && space.form === 'order') rights.push(precedenceCondition(space, accepts.pairs));
  const outcome = (score: '0' | '1', feedback: string) => [
    setOutcome('SCORE', 'float', score),
    setOutcome(FEEDBACK, 'identifier', feedback),
  ];
  const explained = [explanation.row, explanation.reason].map((line) => el('p', {}, speak(line)));
  const feedback = (identifier: string, ...lines: readonly XmlNode[]) =>
    el(
      'qti-modal-feedback',
      { 'outcome-identifier': FEEDBACK, identifier, 'show-hide': 'show' },
      el('qti-content-body', {}, ...lines, ...explained),
    );
  return writeXml(
    el(
      'qti-assessment-item',
      {
        xmlns: NAMESPACE,
        'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
        'xsi:schemaLocation': `${NAMESPACE} ${SCHEMA}`,
        identifier: itemName(question),
        title: speak(phrase(`family.${question.family}`)),
        adaptive: false,
        'time-dependent': false,
        'xml:lang': language,
        'tool-name': 'Detent',
      },
      ...declaredFor(space, answers[0]).map(responseDeclaration),
      el(
        'qti-outcome-declaration',
        {
          identifier: 'SCORE',
          cardinality: 'single',
          'base-type': 'float',
          'normal-minimum': 0,
          'normal-maximum': 1,
        },
        el('qti-default-value', {}, el('qti-value', {}, '0')),
      ),
      el('qti-outcome-declaration', {
        identifier: FEEDBACK,
        cardinality: 'single',
        'base-type': 'identifier',
      }),
      el(
        'qti-item-body',
        {},
        ...question.cautions.map((caution) =>
          el('p', {}, el('strong', {}, speak(phrase('qti.caution', { text: caution })))),
        ),
        ...(picture ? [pictureOf(picture)] : []),
        ...interactionFor(question, speak),
      ),
      el(
        'qti-response-processing',
        {},
        el(
          'qti-response-condition',
          {},
          el(
            'qti-response-if',
            {},
            rights.length === 1 ? rights[0]! : el('qti-or', {}, ...rights),
            ...outcome('1', 'right'),
          ),
          ...groups.map(([first], place) =>
            el(
              'qti-response-else-if',
              {},
              conditionFor(space, first!.answer),
              ...outcome('0', `slip${place + 1}`),
            ),
          ),
          el('qti-response-else', {}, ...outcome('0', 'other')),
        ),
      ),
      feedback('right'),
      ...groups.map((group, place) => {
        const names = [...new Set(group.map(({ slipUp }) => slipUp))];
        return feedback(
          `slip${place + 1}`,
          el(
            'div',
            { 'data-slip-up': names.join(' ') },
            ...names.map((name) => el('p', {}, speak(phrase(`slip-up.${name}`)))),
          ),
        );
      }),
      feedback('other'),
    ),
  );
}
