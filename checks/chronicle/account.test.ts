import { beforeAll, expect, it } from 'vitest';
import { figureNamed } from '../../src/chronicle/index.ts';
import { type Told, toldDemo } from './account.ts';

let told: Told;
beforeAll(async () => {
  told = await toldDemo();
}, 120_000);

const texts = (value: unknown) => JSON.stringify(value);

it('tells the printings in the order of release, those of one release at one place', () => {
  const { printings } = told.account;
  expect(printings.map(({ id }) => id)).toEqual(told.results.dating.order);
  expect(printings[0]?.release).toMatchObject({ place: 1, after: null });
  const [plain, foil] = ['br-plain', 'br-foil'].map(
    (id) => printings.find((one) => one.id === id)?.release,
  );
  expect(foil?.place).toBe(plain?.place);
  expect(foil?.after).toEqual(plain?.after);
});

it('keeps at home what is marked to stay', () => {
  const { account, dossier } = told;
  const all = texts(account);
  // Traits, a source with its claims, a reader without consent, pictures without rights.
  for (const word of ['"screen"', '"glow"', 'in-hand', 'a former member', 'hare-4', 'listing.jpg'])
    expect(all).not.toContain(word);
  expect(account.withheldClaims).toBe(
    dossier.evidence.claims.filter(({ source }) => source === 'in-hand').length,
  );
  expect(account.withheldClaims).toBeGreaterThan(0);
  expect(account.corrections.map(({ credit }) => credit)).toEqual([
    null,
    null,
    'a reader in Gdynia',
  ]);
});

it('names every figure once, and takes it from the steps', () => {
  const { account, results } = told;
  const names = account.figures.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  const dated = results.dating.printings.find(({ id }) => id === 'kr-monthly');
  expect(figureNamed(account, 'release.kr-monthly')?.value).toMatchObject({
    best: dated?.best,
    p: dated?.p_best,
  });
  const plumb = results.population.printings[0]?.services[0];
  expect(figureNamed(account, `population.fi-supplement.${plumb?.service}`)).toMatchObject({
    value: { count: plumb?.total },
    asOf: plumb?.as_of,
    unit: 'copies',
  });
  expect(figureNamed(account, 'printings')?.value).toMatchObject({ count: 16 });
  expect(figureNamed(account, 'price.gb-first')?.value).toMatchObject({ currency: 'EUR' });
  expect(figureNamed(account, 'release.nothing')).toBeUndefined();
});

it('rests each release on claims that are shown, under lasting keys', () => {
  for (const { release, id } of told.account.printings) {
    const figure = figureNamed(told.account, `release.${id}`);
    expect(figure?.claims).toEqual(release.claims.map(({ key }) => key));
    expect(new Set(figure?.claims).size).toBe(figure?.claims.length);
  }
  const first = told.account.printings.find(({ id }) => id === 'gb-first');
  expect(first?.release.claims.map(({ key }) => key)).toContain(
    'qm-archive.on-sale.gb-first-or-gb-second',
  );
});

it('tells twins apart by what may be published', () => {
  const second = told.account.printings.find(({ id }) => id === 'gb-second');
  expect(second?.told[0]).toMatchObject({ other: 'gb-first' });
  expect(second?.told[0]?.by).toContainEqual({
    trait: 'bell ink',
    here: 'pale',
    there: 'deep',
    sees: 'scan',
  });
});
