import type { Extant, Population, PrintingCount, ServiceCount } from '../../population/index.ts';
import type { Called } from './called.ts';
import { type Row, tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { counted, percent } from './words.ts';

/** Lines listed of falls, and of labels that are doubtful. */
const LISTED = 20;

/** The populations of a dossier: a table by printing and service, then what stands behind it. */
export function* populationReport(
  answer: Population,
  called: Called,
  title: string,
  width: number,
): Generator<string> {
  const day = answer.on === null ? 'no day is known' : `as of ${answer.on}`;
  yield `${title === '' ? 'Population' : title}: ${counted(answer.printings.length, 'printing')}, ${day}.\n\n`;
  yield tableOf(
    COLUMNS,
    answer.printings.flatMap((one) => rowsOf(one, called)),
    width,
  );
  yield '\n';
  yield paragraph(READING, width);
  yield* extants(answer, called, width);
  yield* lows(answer, called, width);
  yield* labels(answer, called, width);
  yield* falls(answer, width);
  for (const service of answer.assumed)
    yield paragraph(
      `services.csv states no grades for ${service}: they were read off its report, and its highest number was taken for the top grade.`,
      width,
    );
}

const COLUMNS = [
  { head: 'printing' },
  { head: 'service' },
  { head: 'as of' },
  { head: 'graded', align: 'right' },
  { head: 'top', align: 'right' },
  { head: 'top rate', align: 'right' },
  { head: '95 %', align: 'right' },
  { head: 'shrunk', align: 'right' },
  { head: '95 %', align: 'right' },
] as const;

const READING =
  'A population is what people sent in so far, the best copies first and some more than once; it is no sample, and its intervals tell only how far chance carries the rate. “Shrunk” is the rate in the light of the service’s other printings. ≈ marks an estimated share of a label that holds several printings.';

function rowsOf({ id, services }: PrintingCount, called: Called): Row[] {
  const name = called.printing(id);
  if (services.length === 0) return [[name, 'listed by no service', '', '', '', '', '', '', '']];
  return services.map((one, i) => [i === 0 ? name : '', ...cellsOf(one)]);
}

function cellsOf(one: ServiceCount): string[] {
  const lumped = one.lumped_with.length > 0;
  const total = Math.round(one.total);
  const graded = lumped
    ? `≈${total} (${Math.floor(one.total95[0])}–${Math.ceil(one.total95[1])})`
    : String(total);
  return [
    one.service,
    one.as_of,
    graded,
    lumped ? `≈${one.top.toFixed(0)}` : String(one.top),
    one.rate === null ? '–' : share(one.rate),
    range(one.interval95),
    share(one.shrunk),
    range(one.shrunk95),
  ];
}

function share(rate: number): string {
  return `${(100 * rate).toFixed(1)} %`;
}

function range([low, high]: readonly [number, number]): string {
  return `${(100 * low).toFixed(1)}–${(100 * high).toFixed(1)}`;
}

function paragraph(text: string, width: number): string {
  return wrapped(text, width)
    .map((line) => `${line}\n`)
    .join('');
}

function* extants(answer: Population, called: Called, width: number): Generator<string> {
  const known = answer.printings.filter(({ extant }) => extant !== null);
  yield '\nCertified copies that can turn up, from certificates seen again\n';
  if (known.length === 0) {
    yield paragraph('Not known: no certificate was seen twice.', width);
    return;
  }
  for (const { id, extant } of known)
    yield paragraph(`${called.printing(id)}: ${extantWords(extant as Extant)}`, width);
  const silent = answer.printings.length - known.length;
  if (silent > 0)
    yield paragraph(
      `Not known for ${counted(silent, 'other')}: no certificate was seen twice.`,
      width,
    );
}

function extantWords(extant: Extant): string {
  const { estimate, interval95, bound, seen, again, from, to, cautions } = extant;
  const about = bound === 'lower' ? `at least about ${estimate}` : `about ${estimate}`;
  const doubt = `95 %: ${interval95[0]} to ${interval95[1]}`;
  const basis = `${counted(seen, 'certificate')} seen, ${again} seen again, ${from} to ${to}`;
  return [`${about} (${doubt}; ${basis}).`, ...cautions].join(' ');
}

function* lows(answer: Population, called: Called, width: number): Generator<string> {
  const low = answer.printings.flatMap(({ id, low: why }) => (why ? [{ id, why }] : []));
  if (low.length === 0) return;
  yield '\nLow because few exist, or because few were sent in?\n';
  for (const { id, why } of low) {
    const settle = why.settle === null ? '' : ` What would settle it: ${why.settle}.`;
    yield paragraph(
      `${called.printing(id)}: few exist ${percent(why.p_few_exist)}, few were sent in ${percent(1 - why.p_few_exist)}, from ${why.raw} raw and ${why.graded} graded on offer.${settle}`,
      width,
    );
  }
}

function* labels(answer: Population, called: Called, width: number): Generator<string> {
  const doubtful = answer.matches.filter(({ p, printing }) =>
    printing === null ? p >= 0.05 : p > 0.05 && p < 0.95,
  );
  yield '\nLabels that are in doubt\n';
  if (doubtful.length === 0) yield 'None.\n';
  for (const { service, label, printing, p } of doubtful.slice(0, LISTED)) {
    const whose = printing === null ? 'not in this dossier' : called.printing(printing);
    yield paragraph(`${service}, “${label}”: ${whose} ${percent(p)}`, width);
  }
  if (doubtful.length > LISTED) yield `… and ${doubtful.length - LISTED} more.\n`;
}

function* falls(answer: Population, width: number): Generator<string> {
  if (answer.falls.length === 0) return;
  yield '\nCounts that fell, which grading alone cannot do\n';
  for (const one of answer.falls.slice(-LISTED)) {
    const what = one.grade === null ? '' : `, grade ${one.grade}`;
    yield paragraph(
      `${one.service}, “${one.label}”${what}: ${one.before} on ${one.from}, ${one.after} on ${one.to}: ${one.explanation}.`,
      width,
    );
  }
  if (answer.falls.length > LISTED) yield `… and ${answer.falls.length - LISTED} earlier ones.\n`;
}
