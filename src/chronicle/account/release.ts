import type { DatedPrinting, Dating, ExplainedClaim } from '../../dating/index.ts';
import type { Claim } from '../../evidence/index.ts';
import type { Release, ToldClaim } from './types.ts';

/** What may be told of the claims: those of sources that stay at home are not there. */
export interface PublishedClaims {
  readonly byRow: ReadonlyMap<number, Claim>;
  readonly keys: ReadonlyMap<number, string>;
}

/** The release of each printing by its id. */
export function releasesOf(
  dating: Dating,
  published: PublishedClaims,
): ReadonlyMap<string, Release> {
  const places = new Map(dating.order.map((id, i) => [id, i]));
  const first = new Map(dating.first.map(({ id, p }) => [id, p]));
  const before = new Map(dating.sequences.map((one) => [one.later, one]));
  return new Map(
    dating.printings.map((dated) => {
      const event = [dated.id, ...dated.together];
      const place = Math.min(...event.map((id) => places.get(id) ?? dating.printings.length - 1));
      const sequence = event.flatMap((id) => before.get(id) ?? [])[0];
      const after = sequence && {
        id: sequence.earlier,
        p: sequence.p,
        pSameDay: sequence.p_same_day,
        stated: sequence.stated,
      };
      return [
        dated.id,
        {
          ...dayOf(dated),
          place: place + 1,
          pFirst: first.get(dated.id) ?? 0,
          after: after ?? null,
          claims: dated.claims.flatMap((claim) => toldClaim(claim, published)),
        },
      ];
    }),
  );
}

function dayOf(dated: DatedPrinting): Omit<Release, 'place' | 'pFirst' | 'after' | 'claims'> {
  return {
    best: dated.best,
    edtf: dated.edtf,
    pBest: dated.p_best,
    interval95: dated.interval95,
    pInterval: dated.p_interval,
    state: dated.state,
    days: dated.days,
    modes: dated.modes,
    together: dated.together,
    why: dated.why,
  };
}

function toldClaim(explained: ExplainedClaim, { byRow, keys }: PublishedClaims): ToldClaim[] {
  const claim = byRow.get(explained.row);
  if (claim === undefined) return [];
  return [
    {
      key: keys.get(explained.row) ?? '',
      source: explained.source,
      property: explained.property,
      value: explained.value,
      locator: claim.locator ?? null,
      quote: claim.quote ?? null,
      pRight: explained.p_right,
      reading: explained.reading,
      explanation: explained.explanation,
      slip: explained.slip,
      span: explained.span,
    },
  ];
}
