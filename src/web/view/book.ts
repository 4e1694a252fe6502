import { type Name, namesOf, type ToName } from '../../catalogue/index.ts';
import type {
  ClaimRow,
  DossierAnswer,
  HeldRow,
  PrintingRow,
  ProductRow,
  SourceRow,
  WireDating,
} from '../../contract/index.ts';

export type DatedPrinting = WireDating['printings'][number];
export type DatedSource = WireDating['sources'][number];
export type WeighedClaim = DossierAnswer['facts'][number]['claims'][number];
export type DatedClaim = DatedPrinting['claims'][number];

/** Dossier and dating side by side, so that a screen can look things up by id. */
export interface Book {
  readonly dossier: DossierAnswer;
  readonly dating: WireDating | undefined;
  readonly pending: 'dating' | 'refining' | 'none';
  readonly printings: ReadonlyMap<string, PrintingRow>;
  readonly products: ReadonlyMap<string, ProductRow>;
  readonly sources: ReadonlyMap<string, SourceRow>;
  /** Copies on the desk, by printing. */
  readonly held: ReadonlyMap<string, HeldRow>;
  readonly dated: ReadonlyMap<string, DatedPrinting>;
  readonly datedSources: ReadonlyMap<string, DatedSource>;
  readonly names: ReadonlyMap<string, Name>;
  /** Claims on facts that are no dates, by their row. */
  readonly weighed: ReadonlyMap<number, WeighedClaim>;
}

/** Joins dossier and dating; linear in their size. */
export function bookOf(
  dossier: DossierAnswer,
  dating: WireDating | undefined,
  pending: Book['pending'],
): Book {
  const products = new Map(dossier.products.map((row) => [row.id, row]));
  return {
    dossier,
    dating,
    pending,
    products,
    printings: new Map(dossier.printings.map((row) => [row.id, row])),
    sources: new Map(dossier.sources.map((row) => [row.id, row])),
    held: new Map(dossier.held.map((row) => [row.printing, row])),
    dated: new Map(dating?.printings.map((row) => [row.id, row])),
    datedSources: new Map(dating?.sources.map((row) => [row.id, row])),
    names: namesOf(dossier.printings.map((row) => toName(row, products))),
    weighed: new Map(dossier.facts.flatMap(({ claims }) => claims.map((one) => [one.row, one]))),
  };
}

function toName({ id, cells }: PrintingRow, products: ReadonlyMap<string, ProductRow>): ToName {
  return { id, cells, productTitle: products.get(cells.product ?? '')?.cells.title };
}

/** A printing's name in one line, for a sentence or a list. */
export function shortName(book: Book, id: string): string {
  return book.names.get(id)?.short ?? id;
}

/** All of a printing's name in one line, for finding and choosing. */
export function fullName(book: Book, id: string): string {
  const name = book.names.get(id);
  return name ? [name.title, name.detail].filter(Boolean).join(', ') : id;
}

/** What a source is called. */
export function sourceName(book: Book, id: string): string {
  return book.sources.get(id)?.cells.title || id || 'no source';
}

/** What a product is called; plain words stay what they are. */
export function productName(book: Book, id: string): string {
  return book.products.get(id)?.cells.title || id;
}

/** A claim of the dossier with what dating thinks of it for one printing, where it does. */
export interface JoinedClaim {
  readonly claim: ClaimRow;
  readonly dated: DatedClaim | undefined;
}

/** Rows shift when one is withdrawn: a claim is known again by what it says. */
function keyOf(claim: { source: string; property: string; value: string }): string {
  return `${claim.source}\u0000${claim.property}\u0000${claim.value}`;
}

/** Claims on a printing, those of its products among them, as the dossier holds them now. */
export function claimsOf(book: Book, printing: string): readonly JoinedClaim[] {
  const dated = book.dated.get(printing)?.claims ?? [];
  const byKey = new Map(dated.map((claim) => [keyOf(claim), claim]));
  const byRow = new Map(dated.map((claim) => [claim.row, claim]));
  const joined: JoinedClaim[] = [];
  for (const claim of book.dossier.claims) {
    const at = byRow.get(claim.row);
    const same = at && keyOf(at) === keyOf(claim) ? at : byKey.get(keyOf(claim));
    const named = claim.printings.includes(printing);
    const parents = [book.printings.get(printing)?.cells.part_of ?? ''].filter(Boolean);
    if (named || (same && same === at) || claim.printings.some((id) => parents.includes(id))) {
      joined.push({ claim, dated: same });
    }
  }
  return joined;
}
