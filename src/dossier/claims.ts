import { type Claim, DATE_PROPERTIES, type EdtfDate } from '../evidence/index.ts';
import { type Check, checkOf } from './cell-types.ts';
import { FATE } from './faults.ts';
import type { Ground } from './ground.ts';
import type { ReadTable } from './read-table.ts';
import { typeNamed } from './schema-types.ts';

const DATED: ReadonlySet<string> = new Set(DATE_PROPERTIES);

const NO_PRINTING: readonly string[] = [];

type Draft = { -readonly [K in keyof Claim]: Claim[K] };

/**
 * All claims that can be used. A claim with an empty value says nothing and is passed over. What the
 * claims refer to is followed here, since the largest table is not to be looked through twice.
 */
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
  readonly #language: Check;
  readonly #printing: Check;
  readonly #properties: PooledColumn;
  readonly #sources: PooledColumn;
  readonly #products: PooledColumn;
  readonly #at: Readonly<Record<ClaimColumn, number>>;

  constructor(table: ReadTable, ground: Ground) {
    this.#table = table;
    this.#ground = ground;
    const places = CLAIM_COLUMNS.map((column) => [column, table.indexOf(column)]);
    this.#at = Object.fromEntries(places) as Record<ClaimColumn, number>;
    this.#language = checkOf(typeNamed('language'), ground.around);
    this.#printing = checkOf(typeNamed('printing'), ground.around);
    this.#properties = this.#column('property');
    this.#sources = this.#column('source');
    this.#products = this.#column('product');
  }

  /** The claim of a row; undefined, and all that is wrong with it listed, where it has none. */
  claim(row: number): Claim | undefined {
    const value = this.#cell(row, 'value');
    const property = this.#properties.read(row);
    const date = property !== undefined && DATED.has(property) ? this.#date(value) : undefined;
    const sound = date !== undefined || this.#isSound(row, property, value);
    const source = this.#sources.read(row);
    const product = this.#products.read(row);
    const printings = this.#printings(row, product);
    if (!sound || property === undefined || source === undefined || printings === undefined) {
      this.#table.leaveOut(row);
      return undefined;
    }
    if (value === '') return undefined;
    const claim: Draft = { row, printings, source, property, value };
    if (product !== undefined && product !== '') claim.product = product;
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

  #date(text: string): EdtfDate | undefined {
    if (text === '' || text === 'none') return undefined;
    const reading = this.#ground.around.date(text);
    return reading.ok ? reading.date : undefined;
  }

  /** The printings meant, none where it is a product; undefined where neither is known. */
  #printings(row: number, product: string | undefined): readonly string[] | undefined {
    const cell = this.#cell(row, 'printing');
    if (cell === '' && product === undefined) return undefined;
    if (cell !== '' && product) {
      return this.#fault(row, 'product', product, 'a printing or a product, not both');
    }
    if (product) return NO_PRINTING;
    if (cell === '') return this.#fault(row, 'printing', '', 'a printing or a product');
    const printings = this.#ground.printings.resolve(cell);
    if (printings.length > 0) return printings;
    const expected = this.#printing(cell);
    return expected === undefined ? undefined : this.#fault(row, 'printing', cell, expected);
  }

  /** Whether a value is of the kind that its property wants. */
  #isSound(row: number, property: string | undefined, value: string): boolean {
    const expected = value === '' ? undefined : this.#expected(property, value);
    if (expected === undefined) return true;
    this.#fault(row, 'value', value, expected);
    return false;
  }

  #expected(property: string | undefined, value: string): string | undefined {
    if (property === 'exists') return /^(yes|no)$/.test(value) ? undefined : 'yes or no';
    if (value === 'none') return undefined;
    if (property === 'language') return this.#language(value);
    if (property === undefined || !DATED.has(property)) return undefined;
    const reading = this.#ground.around.date(value);
    return reading.ok ? undefined : reading.expected;
  }

  #fault(row: number, column: string, found: string, expected: string): undefined {
    const { file } = this.#table;
    this.#ground.faults.add({ file, row, column, found, expected, fate: FATE.row });
  }

  /** Reads a column of few different texts: one string for all cells that say the same. */
  #column(column: 'source' | 'product' | 'property'): PooledColumn {
    const must = column === 'property';
    const pool = new Map<string, string>(
      must
        ? []
        : [
            ['', ''],
            ['none', ''],
          ],
    );
    const check = checkOf(typeNamed(column), this.#ground.around);
    return {
      read: (row) => {
        const cell = this.#cell(row, column);
        const known = pool.get(cell);
        if (known !== undefined) return known;
        const expected = check(cell);
        if (expected !== undefined) return this.#fault(row, column, cell, expected);
        pool.set(cell, cell);
        return cell;
      },
    };
  }
}

interface PooledColumn {
  /** The cell of a row; undefined, and the fault listed, where it is wrong. */
  read(row: number): string | undefined;
}
