/** What a number measures; a unit that is not in the table is a measure of its own. */
export interface Unit {
  /** `length`, `mass`, `ruling`, `angle`, or the unit itself where it is not in the table. */
  readonly measure: string;
  /** What one unit is in the measure's own: mm, g, lpi, degrees. */
  readonly factor: number;
}

/** Exact by the definition of the inch (25.4 mm) and of the avoirdupois ounce (28.349523125 g). */
const UNITS: Readonly<Record<string, readonly [measure: string, factor: number]>> = {
  mm: ['length', 1],
  cm: ['length', 10],
  m: ['length', 1000],
  in: ['length', 25.4],
  inch: ['length', 25.4],
  '"': ['length', 25.4],
  µm: ['length', 0.001],
  um: ['length', 0.001],
  g: ['mass', 1],
  mg: ['mass', 0.001],
  kg: ['mass', 1000],
  oz: ['mass', 28.349523125],
  lpi: ['ruling', 1],
  'l/in': ['ruling', 1],
  'l/cm': ['ruling', 2.54],
  lpcm: ['ruling', 2.54],
  deg: ['angle', 1],
  '°': ['angle', 1],
  rad: ['angle', 180 / Math.PI],
};

const OWN: Readonly<Record<string, string>> = {
  length: 'mm',
  mass: 'g',
  ruling: 'lpi',
  angle: '°',
};

/** The unit of that name, as written; no name is a pure number. */
export function unitNamed(name: string): Unit {
  const plain = name.trim().normalize('NFC').replace('\u03bc', 'µ');
  const [measure, factor] = UNITS[plain] ?? UNITS[plain.toLowerCase()] ?? [plain, 1];
  return { measure, factor };
}

/** The unit in which numbers of a measure are kept. */
export function ownUnit(measure: string): string {
  return OWN[measure] ?? measure;
}
