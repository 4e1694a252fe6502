import { SOURCE_KINDS } from '../evidence/index.ts';

/** What a cell must be, where it is not empty and not `none`. */
export type ColumnType =
  | { readonly is: PlainType }
  | { readonly is: 'words'; readonly words: readonly string[] }
  /** An id of one of these tables; `many`: several, with `|` between them. */
  | { readonly is: 'ref'; readonly to: readonly string[]; readonly many: boolean };

const PLAIN_TYPES = [
  'text',
  'id',
  'edtf',
  'property',
  'weekdays',
  'money',
  'currency',
  'language',
  'number',
  'positive',
  'count',
  'odds',
  'time',
  'path',
  'sha256',
  'trait-value',
] as const;
export type PlainType = (typeof PLAIN_TYPES)[number];

const ref = (many: boolean, ...to: string[]): ColumnType => ({ is: 'ref', to, many });

const NAMED: ReadonlyMap<string, ColumnType> = new Map<string, ColumnType>([
  ...PLAIN_TYPES.map((is) => [is, { is }] as const),
  ['source-kind', { is: 'words', words: SOURCE_KINDS }],
  ['a-printing', ref(false, 'printings.csv')],
  ['printing', ref(true, 'printings.csv')],
  ['product', ref(false, 'products.csv')],
  ['source', ref(false, 'sources.csv')],
  ['sources', ref(true, 'sources.csv')],
  ['service', ref(false, 'services.csv')],
  ['copy', ref(false, 'desk/copies.csv')],
  ['parcel', ref(false, 'desk/parcels.csv')],
  ['bearer', ref(true, 'printings.csv', 'counterfeits.csv')],
  ['pictured', ref(true, 'printings.csv', 'desk/copies.csv', 'sources.csv', 'counterfeits.csv')],
]);

/** A type by its name, or words with `/` between them. Throws TypeError for another name. */
export function typeNamed(name: string): ColumnType {
  const type = NAMED.get(name);
  if (type !== undefined) return type;
  if (!name.includes('/')) throw new TypeError(`type must have a name of the schema, not ${name}`);
  return { is: 'words', words: name.split('/').filter((word) => word !== '') };
}
