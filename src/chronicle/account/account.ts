import { namesOf, type Printing } from '../../catalogue/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { figuresOf } from '../figures/figures.ts';
import { toldApart } from './apart.ts';
import { claimKeys } from './claim-keys.ts';
import { countsOf, toldExtant, toldPrices } from './counts.ts';
import { disputesOf } from './disputes.ts';
import type { AccountGround, Results } from './ground.ts';
import { type PublishedClaims, releasesOf } from './release.ts';
import { toldSources } from './sources.ts';
import { toldTraits } from './traits.ts';
import type { Account, Release, ToldCounterfeit, ToldPrinting } from './types.ts';

/**
 * The account of a card. What is marked to stay at home is not in it: traits, pictures without
 * rights, sources with their claims, readers' names without consent; nothing of the desk but
 * pictures that their owner marked to be published.
 */
export function accountOf(ground: AccountGround, results: Results): Account {
  const { evidence, subject, on } = ground;
  const sources = evidence.sources.filter(({ publish }) => publish !== 'no');
  const shown = new Set(sources.map(({ id }) => id));
  const claims = evidence.claims.filter(({ source }) => shown.has(source));
  const published: PublishedClaims = {
    byRow: new Map(claims.map((claim) => [claim.row, claim])),
    keys: claimKeys(evidence.claims),
  };
  const told = {
    subject,
    asOf: on === null ? null : isoOf(on),
    printings: printingsOf(ground, results, published),
    sources: toldSources(sources, claims, results.dating),
    services: ground.records.services.map(({ id, title, grades, top }) => ({
      id,
      title: title ?? id,
      top: grades[top] ?? '',
    })),
    counterfeits: counterfeitsOf(ground),
    corrections: [...ground.corrections].sort((a, b) => (a.received < b.received ? 1 : -1)),
    story: ground.stories.get('story/index.md') ?? null,
    currency: results.prices === null ? null : (ground.prices?.currency ?? null),
    withheldClaims: evidence.claims.length - claims.length,
  };
  return { ...told, figures: figuresOf(told) };
}

function printingsOf(
  ground: AccountGround,
  results: Results,
  published: PublishedClaims,
): ToldPrinting[] {
  const { evidence, pictures, stories } = ground;
  const releases = releasesOf(results.dating, published);
  const titles = new Map(evidence.products.map(({ id, title }) => [id, title ?? null]));
  const names = namesOf(evidence.printings.map((cells) => toName(cells, titles)));
  const traits = toldTraits(ground.traits);
  const apart = toldApart(evidence.printings, traits);
  const counted = new Map(results.population.printings.map((one) => [one.id, one]));
  const disputes = disputesOf(results.facts, published);
  const order = new Map(results.dating.order.map((id, i) => [id, i]));
  const rank = ({ id }: Printing) => order.get(id) ?? order.size;
  return [...evidence.printings]
    .sort((a, b) => rank(a) - rank(b))
    .map((cells): ToldPrinting => {
      const { id } = cells;
      return {
        id,
        name: names.get(id) ?? { title: id, detail: '', short: id },
        cells,
        productTitle: titles.get(cells.product ?? '') ?? null,
        release: releases.get(id) as Release,
        disputes: disputes.get(id) ?? [],
        traits: traits.get(id) ?? [],
        told: apart.get(id) ?? [],
        counts: countsOf(counted.get(id)),
        extant: toldExtant(counted.get(id)?.extant ?? null),
        prices: toldPrices(results.prices?.get(id) ?? []),
        counterfeits: ground.counterfeits.filter((one) => one.printings.includes(id)).map(idOf),
        pictures: pictures.filter(({ of }) => of === id),
        story: stories.get(`story/${id}.md`) ?? null,
      };
    });
}

function toName(cells: Printing, titles: ReadonlyMap<string, string | null>) {
  return { id: cells.id, cells, productTitle: titles.get(cells.product ?? '') ?? undefined };
}

function idOf({ id }: { readonly id: string }): string {
  return id;
}

function counterfeitsOf({ counterfeits, traits, pictures }: AccountGround): ToldCounterfeit[] {
  const told = toldTraits(traits);
  return counterfeits.map((one) => ({
    ...one,
    traits: told.get(one.id) ?? [],
    pictures: pictures.filter(({ of }) => of === one.id),
  }));
}
