/** A QTI 3.0 package: a zip of one item a question, their images, and the manifest that lists them. */
import { strToU8, zipSync } from 'fflate';
import type { Question } from '../../core/questions/question.ts';
import type { Deck } from '../../core/unit/deck.ts';
import { el, writeXml } from '../xml.ts';
import { isExportable, type Picture, type Speak, writeItem } from './item.ts';
import { itemName, namePart } from './names.ts';
import { tablePicture } from './pictures.ts';

/** A drawing made by the caller: a whole SVG document with what it shows in words, or the words alone. */
export interface Drawn {
  readonly svg?: string;
  readonly alt: string;
}

export interface PackageRequest {
  readonly deck: Deck;
  readonly questions: readonly Question[];
  readonly speak: Speak;
  /** Drawings that are no table; null for one that cannot be shown. */
  readonly draw: (question: Question) => Drawn | null;
}

/** Why a question is not in the package: its drawing cannot be shown, or QTI cannot say what is right. */
export type LeftOut = 'no-drawing' | 'no-condition';

export interface QtiPackage {
  readonly zip: Uint8Array;
  readonly items: readonly string[];
  readonly leftOut: readonly { readonly question: Question; readonly why: LeftOut }[];
}

const MANIFEST = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';
/** The earliest time a zip can state: the same questions give the same bytes. */
const NO_TIME = new Date(1980, 0, 1);

interface Packed {
  readonly name: string;
  readonly xml: string;
  readonly image: { readonly file: string; readonly svg: string } | null;
}

function packItem({ deck, speak, draw }: PackageRequest, question: Question): Packed | LeftOut {
  if (!isExportable(question)) return 'no-condition';
  const name = itemName(question);
  let picture: Picture | null = null;
  let image: Packed['image'] = null;
  if (question.drawing) {
    picture = tablePicture(deck, question.drawing, speak);
    const drawn = picture ? null : draw(question);
    if (!picture && !drawn) return 'no-drawing';
    if (drawn?.svg !== undefined) {
      image = { file: `drawings/${name}.svg`, svg: drawn.svg };
      picture = { kind: 'image', file: `../${image.file}`, alt: drawn.alt };
    } else if (drawn) picture = { kind: 'text', lines: [drawn.alt] };
  }
  return { name, xml: writeItem(question, picture, speak, deck.language ?? 'en'), image };
}

function manifestOf(deck: Deck, items: readonly Packed[]): string {
  return writeXml(
    el(
      'manifest',
      { xmlns: MANIFEST, identifier: `m-${namePart(deck.id)}-r${deck.revision}` },
      el('metadata', {}, el('schema', {}, 'QTI Package'), el('schemaversion', {}, '3.0.0')),
      el('organizations'),
      el(
        'resources',
        {},
        ...items.map(({ name, image }) =>
          el(
            'resource',
            { identifier: name, type: 'imsqti_item_xmlv3p0', href: `items/${name}.xml` },
            el('file', { href: `items/${name}.xml` }),
            ...(image ? [el('file', { href: image.file })] : []),
          ),
        ),
      ),
    ),
  );
}

/** The package of these questions, each once; what cannot be exported is left out and said. */
export function makePackage(request: PackageRequest): QtiPackage {
  const packed = new Map<string, Packed>();
  const leftOut: { question: Question; why: LeftOut }[] = [];
  for (const question of request.questions) {
    const item = packItem(request, question);
    if (typeof item === 'string') leftOut.push({ question, why: item });
    else packed.set(item.name, item);
  }
  const items = [...packed.values()];
  const files: Record<string, Uint8Array> = { 'imsmanifest.xml': strToU8(manifestOf(request.deck, items)) };
  for (const { name, xml, image } of items) {
    files[`items/${name}.xml`] = strToU8(xml);
    if (image) files[image.file] = strToU8(image.svg);
  }
  return { zip: zipSync(files, { mtime: NO_TIME, level: 9 }), items: items.map(({ name }) => name), leftOut };
}
