import { fontOf, type Tables, tablesOf, viewOf } from './sfnt.ts';

/** Copyright, licence and where the licence stands: they stay with every part of a font. */
export const KEPT_NAMES = [0, 13, 14];
/** Windows, Unicode, American English, as every reader of fonts takes them. */
const PLACE = [3, 1, 0x409];

/**
 * The font under a name of its own, since a part cut from a variable font keeps the name of another
 * weight. Copyright and licence stay (`iso:2019`).
 */
export function renamed(font: Uint8Array, family: string, style: 'Regular' | 'Italic'): Uint8Array {
  const tables = tablesOf(font);
  const own: [number, Uint8Array][] = [
    ...keptNames(tables),
    [1, utf16(family)],
    [2, utf16(style)],
    [4, utf16(style === 'Regular' ? family : `${family} ${style}`)],
    [6, utf16(`${family}-${style}`.replaceAll(' ', ''))],
  ];
  return fontOf(new Map([...tables, ['name', nameTable(own.sort(([a], [b]) => a - b))]]));
}

function keptNames(tables: Tables): [number, Uint8Array][] {
  const table = tables.get('name') ?? new Uint8Array(6);
  const view = viewOf(table);
  const text = view.getUint16(4);
  return Array.from({ length: view.getUint16(2) }, (_, i) => 6 + 12 * i).flatMap((at) => {
    const id = view.getUint16(at + 6);
    const ours = PLACE.every((word, j) => view.getUint16(at + 2 * j) === word);
    if (!ours || !KEPT_NAMES.includes(id)) return [];
    const from = text + view.getUint16(at + 10);
    return [[id, table.slice(from, from + view.getUint16(at + 8))] as [number, Uint8Array]];
  });
}

function nameTable(names: readonly (readonly [number, Uint8Array])[]): Uint8Array {
  const text = 6 + 12 * names.length;
  const table = new Uint8Array(names.reduce((sum, [, { length }]) => sum + length, text));
  const view = viewOf(table);
  view.setUint16(2, names.length);
  view.setUint16(4, text);
  let from = text;
  for (const [i, [id, bytes]] of names.entries()) {
    for (const [j, word] of [...PLACE, id, bytes.length, from - text].entries())
      view.setUint16(6 + 12 * i + 2 * j, word);
    table.set(bytes, from);
    from += bytes.length;
  }
  return table;
}

/** Big end first. */
function utf16(text: string): Uint8Array {
  const bytes = new Uint8Array(2 * text.length);
  for (let i = 0; i < text.length; i++) viewOf(bytes).setUint16(2 * i, text.charCodeAt(i));
  return bytes;
}
