/** The steps of the job: pure, from values to values. */
export const STEPS = [
  'maths',
  'catalogue',
  'evidence',
  'dating',
  'population',
  'bench',
  'market',
  'chronicle',
];

/**
 * Which folder under `src/` may import which others.
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const MAY_IMPORT = {
  maths: [],
  catalogue: ['maths'],
  evidence: ['maths', 'catalogue'],
  dating: ['maths', 'catalogue', 'evidence'],
  population: ['maths', 'catalogue', 'evidence'],
  bench: ['maths', 'catalogue', 'evidence'],
  market: ['maths', 'catalogue', 'evidence', 'population', 'bench'],
  chronicle: STEPS,
  dossier: STEPS,
  store: STEPS,
  host: STEPS,
  contract: STEPS,
  press: [...STEPS, 'dossier', 'host'],
  server: [...STEPS, 'contract', 'dossier', 'store', 'host', 'press'],
  cli: [...STEPS, 'dossier', 'store', 'host', 'press'],
  web: ['contract', ...STEPS],
};

/**
 * Where a permission covers types alone.
 * @type {readonly { from: string; to: readonly string[]; except?: string }[]}
 */
export const TYPES_ONLY = [
  { from: 'host', to: STEPS },
  { from: 'contract', to: STEPS },
  { from: 'market', to: ['population', 'bench'] },
  { from: 'web', to: STEPS.slice(3), except: '\\.worker\\.ts$' },
];
