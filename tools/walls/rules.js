import { MAY_IMPORT, STEPS, TYPES_ONLY } from './table.js';

const TEST = '\\.test\\.tsx?$';
/** Files under src that only the build, tests and a checkout that is not compiled use. */
const TOOLING = '(/vite\\.config\\.ts|/from-source\\.js|-arbitrary\\.ts)$';
const OURS = '^(src|checks|demo|tools|bin)/';

/** @param {readonly string[]} folders */
const inside = (folders) => `^src/(${folders.join('|')})/`;

const table = Object.entries(MAY_IMPORT).map(([folder, others]) => ({
  name: `${folder}-may-import`,
  comment: `src/${folder} may import ${others.length ? others.join(', ') : 'nothing of ours'}`,
  severity: 'error',
  from: { path: inside([folder]) },
  to: { path: OURS, pathNot: [inside([folder, ...others]), '^checks/fixtures/'] },
}));

const typesOnly = TYPES_ONLY.map(({ from, to, except }) => ({
  name: `${from}-takes-types-only`,
  comment: `src/${from} may take types, and types alone, from ${to.join(', ')}`,
  severity: 'error',
  from: { path: inside([from]), pathNot: except ? [TEST, except] : [TEST] },
  to: { path: inside(to), dependencyTypesNot: ['type-only'] },
}));

const doors = [
  {
    name: 'only-through-the-door',
    comment: 'another folder is entered by its index.ts',
    severity: 'error',
    from: { path: '^src/([^/]+)/' },
    to: { path: '^src/', pathNot: ['^src/$1/', '^src/[^/]+/index\\.ts$'] },
  },
  {
    name: 'only-through-the-door-from-outside',
    comment: 'checks, demo and tools enter a folder by its index.ts',
    severity: 'error',
    from: { path: '^(checks|demo|tools)/' },
    to: { path: '^src/', pathNot: '^src/[^/]+/index\\.ts$' },
  },
  {
    name: 'every-folder-is-in-the-table',
    comment: 'a folder that tools/walls/table.js does not name has no permissions yet',
    severity: 'error',
    from: { path: '^src/', pathNot: inside(Object.keys(MAY_IMPORT)) },
    to: {},
  },
];

const hygiene = [
  {
    name: 'no-cycle',
    comment: 'two files that need each other are one thing, or three',
    severity: 'error',
    from: {},
    to: { circular: true },
  },
  {
    name: 'no-vague-folder',
    comment: 'a helper lives with its one user, or earns a name',
    severity: 'error',
    from: {},
    to: { path: '(^|/)(utils?|common|helpers?|shared)(/|\\.)', pathNot: 'node_modules/' },
  },
  {
    name: 'resolves',
    comment: 'what is imported must be there',
    severity: 'error',
    from: {},
    to: { couldNotResolve: true },
  },
  {
    name: 'no-test-in-the-product',
    comment: 'tests are not imported',
    severity: 'error',
    from: { pathNot: TEST },
    to: { path: TEST },
  },
];

const outside = [
  {
    name: 'steps-are-pure',
    comment: 'a step reads no file and no network; what runs in the page neither',
    severity: 'error',
    from: { path: inside([...STEPS, 'contract', 'web']), pathNot: [TEST, TOOLING] },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'no-tool-in-the-product',
    comment: 'src may use what is under dependencies in package.json, not devDependencies',
    severity: 'error',
    from: { path: '^src/', pathNot: [TEST, TOOLING] },
    to: {
      dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'],
      dependencyTypesNot: ['type-only'],
    },
  },
];

/** The walls between the folders, as dependency-cruiser reads them. */
export const forbidden = [...table, ...typesOnly, ...doors, ...hygiene, ...outside];

/** How the files are read: types count as imports, made folders and broken samples are left out. */
export const options = {
  tsPreCompilationDeps: /** @type {const} */ ('specify'),
  doNotFollow: { path: 'node_modules' },
  exclude: { path: ['^dist/', '/fixtures/'] },
  enhancedResolveOptions: {
    conditionNames: ['import', 'node', 'default', 'types'],
    exportsFields: ['exports'],
    extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
  },
};
