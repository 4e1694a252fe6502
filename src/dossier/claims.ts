import { type Claim, DATE_PROPERTIES, type EdtfDate } from '../evidence/index.ts';
import { checkOf } from './cell-types.ts';
import type { Ground } from './evidence.ts';
import { FATE } from './faults.ts';
import type { ReadTable } from './read-table.ts';

const DATED: ReadonlySet<string> = new Set(DATE_PROPERTIES);

type Draft = { -readonly [K in keyof Claim]: Claim[K] };

/** All claims that can be used. A claim with an empty value says nothing and is passed over. */
export function claimsOf(ground: Ground): Claim[] {
  const table = ground.tables.get('claims.csv');
  if (table === undefined) return [];
  const reader = new ClaimReader(table, ground);
  const claims: Claim[] = [];
  for (const row of table.rows()) {
    const claim = reader.claim(row);
    if (claim !== undefined) claims.push(claim);
  }
  return claims;
}

const OPTIONAL = ['locator', 'quote', 'note'] as const;
const OTHER_DATES = ['stated_on', 'read_on'] as const;
const CLAIM_COLUMNS = [
  'printing',
  'product',
  'source',
  'property',
  'value',
  ...OPTIONAL,
  ...OTHER_DATES,
] as const;
type ClaimColumn = (typeof CLAIM_COLUMNS)[number];

class ClaimReader {
  readonly #table: ReadTable;
  readonly #ground: Ground;
  readonly #pool = new Map<string, string>();
  readonly #language = checkOf({ is: 'language' }, NO_SURROUNDINGS);
  readonly #at: Readonly<Record<ClaimColumn, number>>;

  constructor(table: ReadTable, ground: Ground) {
    this.#table = table;
    this.#ground = ground;
    const places = CLAIM_COLUMNS.map((column) => [column, table.indexOf(column)]);
    this.#at = Object.fromEntries(places) as Record<ClaimColumn, number>;
  }

  claim(row: number): Claim | undefined {
    const value = this.#cell(row, 'value');
    const property = this.#cell(row, 'property');
    const date = DATED.has(property) ? this.#date(value) : undefined;
    if (date === undefined && !this.#isSound(row, property, value)) return undefined;
    const product = this.#cell(row, 'product');
    const printings = this.#printings(row, product);
    if (printings === undefined || value === '') return undefined;
    const source = this.#pooled(this.#cell(row, 'source'));
    const claim: Draft = { row, printings, source, property: this.#pooled(property), value };
    if (printings.length === 0) claim.product = this.#pooled(product);
    if (date !== undefined) {
      claim.date = date;
      // One string for all claims of one date.
      claim.value = date.text;
    }
    this.#addRest(row, claim);
    return claim;
  }

  #addRest(row: number, claim: Draft): void {
    for (const column of OTHER_DATES) {
      const date = this.#date(this.#cell(row, column));
      if (date !== undefined) claim[column] = date;
    }
    for (const column of OPTIONAL) {
      const text = this.#cell(row, column);
      if (text !== '') claim[column] = text;
    }
  }

  #cell(row: number, column: ClaimColumn): string {
    return this.#table.valueAt(row, this.#at[column]);
  }

  /** One string for all cells that say the same. */
  #pooled(cell: string): string {
    const pooled = this.#pool.get(cell);
    if (pooled !== undefined) return pooled;
    if (this.#pool.size < 200_000) this.#pool.set(cell, cell);
    return cell;
  }

  #date(text: string): EdtfDate | undefined {
    if (text === '' || text === 'none') return undefined;
    const reading = this.#ground.date(text);
    return reading.ok ? reading.date : undefined;
  }

  /** The printings meant, none where it is a product; undefined where neither is known. */
  #printings(row: number, product: string): readonly string[] | undefined {
    const cell = this.#cell(row, 'printing');
    if (cell !== '' && product !== '') {
      return this.#fault(row, 'product', product, 'a printing or a product, not both');
    }
    if (product !== '') return [];
    if (cell === '') return this.#fault(row, 'printing', '', 'a printing or a product');
    const printings = this.#ground.printings.resolve(cell);
    if (printings.length > 0) return printings;
    this.#table.leaveOut(row);
    return undefined;
  }

  /** Whether a value is of the kind that its property wants. */
  #isSound(row: number, property: string, value: string): boolean {
    const expected = value === '' ? undefined : this.#expected(property, value);
    if (expected === undefined) return true;
    this.#fault(row, 'value', value, expected);
    return false;
  }

  #expected(property: string, value: string): string | undefined {
    if (property === 'exists') return /^(yes|no)$/.test(value) ? undefined : 'yes or no';
    if (value === 'none') return undefined;
    if (property === 'language') return this.#language(value);
    if (!DATED.has(property)) return undefined;
    const reading = this.#ground.date(value);
    return reading.ok ? undefined : reading.expected;
  }

  #fault(row: number, column: string, found: string, expected: string): undefined {
    const { file } = this.#table;
    this.#ground.faults.add({ file, row, column, found, expected, fate: FATE.row });
    this.#table.leaveOut(row);
  }
}

const NO_SURROUNDINGS = {
  date: (text: string) => ({ ok: false as const, expected: text }),
  isProperty: () => false,
  isKnown: () => false,
};
