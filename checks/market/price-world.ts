import { dayFrom } from '../../src/evidence/index.ts';
import type { PricedPrinting, PricedService, PriceGround, Sale } from '../../src/market/index.ts';
import { type Chance, chance, pick } from '../../src/maths/index.ts';

/** How a world of invented prices is drawn; every number is wide on purpose. */
interface PriceWorldKind {
  readonly printings: number;
  readonly sales: number;
  /** More scatter and more odd sales from 0 to 2. */
  readonly hard: 0 | 1 | 2;
}

/** A world of prices with the sales that happened in it and those still to come. */
interface PriceWorld {
  readonly ground: PriceGround;
  /** Sales after the day of printings drawn evenly, sold before or not. */
  readonly next: readonly Sale[];
  /** The true median of each of `next`, as a logarithm. */
  readonly truth: Float64Array;
}

const SERVICES: readonly PricedService[] = [
  { id: 'north', grades: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'], top: '10' },
  { id: 'south', grades: ['5', '6', '7', '8', '8.5', '9', '9.5', '10'], top: '9.5' },
  { id: 'east', grades: ['C', 'B', 'A', 'S'], top: 'S' },
];
const ON = dayFrom('2026-06-30');

type Between = (low: number, high: number) => number;

/** Draws a world. Rates differ from seed to seed over a wide range. */
export function priceWorld(kind: PriceWorldKind, seed: number): PriceWorld {
  const random = chance(seed * 7919 + kind.hard);
  const between: Between = (low, high) => low + (high - low) * random.uniform();
  const habits = habitsOf(kind.hard, between);
  const printings = printingsOf(kind.printings, habits.drift, random, between);
  const levelOf = levels(printings, habits, random, between);
  const draw = (p: number, back: number): [Sale, number] => {
    const s = random.uniform() < 0.45 ? -1 : random.below(SERVICES.length);
    const grades = SERVICES[s]?.grades ?? [];
    const g = s < 0 ? 0 : Math.floor(grades.length * Math.sqrt(random.uniform()));
    const truth = levelOf(p, s, g, back);
    const odd = random.uniform() < habits.odd;
    const side = random.uniform() < 0.5 ? -1 : 1;
    const usual = (s < 0 ? habits.rawScatter : habits.scatter) * random.normal();
    const sale: Sale = {
      day: (ON - back) as Sale['day'],
      printings: [printings[p]!.about.id],
      service: SERVICES[s]?.id ?? null,
      grade: grades[g] ?? null,
      price: Math.exp(truth + (odd ? side * between(0.7, 3) : usual)),
    };
    return [sale, truth];
  };
  const liked = printings.map(() => Math.exp(1.2 * random.normal()));
  const total = liked.reduce((a, b) => a + b, 0);
  const sales = Array.from(
    { length: kind.sales },
    () => draw(pick(random, liked, total), random.below(900))[0],
  );
  const next = Array.from({ length: 400 }, () =>
    draw(random.below(kind.printings), -1 - random.below(75)),
  );
  const about = printings.map((printing) => printing.about);
  return {
    ground: { printings: about, services: SERVICES, sales, on: ON, before: 20 },
    next: next.map(([sale]) => sale),
    truth: Float64Array.from(next, ([, truth]) => truth),
  };
}

function habitsOf(hard: 0 | 1 | 2, between: Between) {
  const scatter = [0.12, 0.2, 0.32][hard]! * between(0.7, 1.4);
  return {
    scatter,
    rawScatter: scatter * between(1, 1.8),
    odd: [0.02, 0.05, 0.1][hard]! * between(0.3, 1.6),
    cell: [0.08, 0.15, 0.25][hard]! * between(0.5, 1.5),
    drift: between(0, 0.15) * (1 + hard),
    walk: between(0.005, 0.05),
  };
}

interface Invented {
  readonly about: PricedPrinting;
  readonly level: number;
  readonly drift: number;
  readonly slope: number;
}

function printingsOf(count: number, drift: number, random: Chance, between: Between): Invented[] {
  const spread = between(0.4, 1.1);
  const plenty = between(-0.5, 0.1);
  const effects = (words: string[], sd: number) =>
    words.map((word) => [word, sd * random.normal()] as const);
  const languages = effects(['fi', 'ko', 'pt', 'en', 'ja'], 0.5);
  const finishes = effects(['plain', 'foil', 'matt'], 0.4);
  return Array.from({ length: count }, (_, i) => {
    const [language, l] = languages[random.below(5)]!;
    const [finish, f] = finishes[random.below(3)]!;
    const amount = 5 + 1.5 * random.normal();
    return {
      about: {
        id: `p-${i}`,
        shared: { language, finish },
        graded: random.uniform() < 0.8 ? Math.round(Math.exp(amount)) : null,
      },
      level: between(2.8, 3.2) + l + f + plenty * (amount - 5) + spread * random.normal(),
      drift: drift * random.normal(),
      slope: Math.max(-0.8, between(0, 0.3) * random.normal()),
    };
  });
}

/** The true logarithm of a price; the grade curve is a power, unlike the model's. */
function levels(
  printings: readonly Invented[],
  { cell, walk }: ReturnType<typeof habitsOf>,
  random: Chance,
  between: Between,
) {
  const curves = SERVICES.map(({ grades }) => {
    const [low, top, bend] = [between(-0.4, 0.4), between(0.5, 2.2), between(1, 4)];
    return grades.map((_, k) => low + top * ((k + 1) / grades.length) ** bend);
  });
  const course = [0];
  for (let s = 1; s < 40; s++) course.push(course[s - 1]! + walk * random.normal() + 0.005);
  const own = new Map<string, number>();
  return (p: number, s: number, g: number, back: number) => {
    const { level, drift, slope } = printings[p]!;
    const key = `${p} ${s} ${g}`;
    if (!own.has(key)) own.set(key, cell * random.normal());
    const grade = s < 0 ? 0 : (1 + slope) * curves[s]![g]!;
    const then = back <= 0 ? 0 : course[Math.floor(back / 30)]!;
    return level + grade + own.get(key)! - (drift * back) / 365.25 + then;
  };
}
