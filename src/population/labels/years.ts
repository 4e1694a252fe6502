import type { Claim, Evidence } from '../../evidence/index.ts';
import { civilOf } from '../../evidence/index.ts';

/** The years that a label may bear for a printing. */
export interface Years {
  /** The year that most claims of release name; undefined where there is none. */
  readonly release: number | undefined;
  /** Years of covers, of labels and of copyright lines, and what its product's title says. */
  readonly others: ReadonlySet<number>;
}

/** How much a claim tells of the year of release. Judgement, no source. */
const WEIGHT: Readonly<Record<string, number>> = {
  'on-sale': 1,
  announced: 0.6,
  'seen-by': 0.3,
  'cover-date': 0.4,
  'label-year': 0.5,
  'printed-on': 0.4,
  'copyright-year': 0.2,
};

/** The years of each printing, in the order of the evidence. */
export function yearsOf(evidence: Evidence): Years[] {
  const ofProduct = new Map<string, Claim[]>();
  const ofPrinting = new Map<string, Claim[]>();
  for (const claim of evidence.claims) {
    if (claim.date === undefined || WEIGHT[claim.property] === undefined) continue;
    if (claim.product !== undefined) keep(ofProduct, claim.product, claim);
    for (const id of claim.printings) keep(ofPrinting, id, claim);
  }
  const products = new Map(evidence.products.map((product) => [product.id, product]));
  const within = new Map<string, string[]>();
  for (const { printing, product } of evidence.contents) keep(within, printing, product);
  return evidence.printings.map(({ id, product = '' }) => {
    const holders = new Set([product, ...(within.get(id) ?? [])]);
    const claims = [...holders].flatMap((holder) => ofProduct.get(holder) ?? []);
    const words = [...holders].map((holder) => {
      const { title = '', issue = '' } = products.get(holder) ?? {};
      return `${holder} ${title} ${issue}`;
    });
    return yearsFrom([...(ofPrinting.get(id) ?? []), ...claims], words.join(' '));
  });
}

function keep<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}

function yearsFrom(claims: readonly Claim[], words: string): Years {
  const weights = new Map<number, number>();
  const others = new Set<number>();
  for (const claim of claims) {
    const year = yearOf(claim);
    if (year === undefined) continue;
    const weight = (WEIGHT[claim.property] ?? 0) / Math.max(1, claim.printings.length);
    weights.set(year, (weights.get(year) ?? 0) + weight);
    others.add(year);
  }
  for (const found of words.match(/(?<!\d)(19|20)\d\d(?!\d)/g) ?? []) others.add(Number(found));
  const release = [...weights].sort((a, b) => b[1] - a[1])[0]?.[0];
  const [only] = others;
  return { release: release ?? only, others };
}

function yearOf({ date }: Claim): number | undefined {
  const first = date?.ranges[0]?.first;
  const last = date?.ranges.at(-1)?.last;
  if (first === undefined || last === undefined) return undefined;
  if (!Number.isFinite(first) || !Number.isFinite(last) || last - first > 400) return undefined;
  return civilOf(first).year;
}
