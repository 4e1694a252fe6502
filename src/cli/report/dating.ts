import type { DatedPrinting, Dating, Sequence } from '../../dating/index.ts';
import { dayFrom, sayDay, sayEdtf, sayRun } from '../../evidence/index.ts';
import type { Called } from './called.ts';
import { sourcesReport } from './sources.ts';
import { type Row, tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { counted, percent } from './words.ts';

/**
 * The chronology for reading, part by part: printings in order with what is known of each day, then
 * slips, sources and leads.
 */
export function* datingReport(
  dating: Dating,
  called: Called,
  title: string,
  width: number,
): Generator<string> {
  const { printings, sources, monte_carlo_error: error } = dating;
  const slips = printings.flatMap(({ claims }) => claims.filter(({ slip }) => slip)).length;
  yield `${title || 'Chronology'}: ${counted(printings.length, 'printing')}, ${counted(sources.length, 'source')}, ${counted(slips, 'slip')}\n\n`;
  yield chronology(dating, called, width);
  yield `\n${wrapped(sampling(dating.seed, error), width).join('\n')}\n`;
  if (slips > 0) yield `\nSlips\n\n${slipsReport(printings, called, width)}`;
  if (sources.length > 0) yield `\nSources\n\n${sourcesReport(sources, called, width)}`;
  if (dating.leads.length > 0)
    yield `\nWhat to look for next\n\n${leadsReport(dating, called, width)}`;
}

function sampling(seed: number, error: number): string {
  if (error === 0) return 'The probabilities are exact.';
  const points = (error * 100).toFixed(1);
  return `Seed ${seed}: by sampling, a probability may be off by ${points} points (standard error).`;
}

function chronology(
  { printings, order, sequences }: Dating,
  called: Called,
  width: number,
): string {
  const byId = new Map(printings.map((printing) => [printing.id, printing]));
  const after = new Map(sequences.map((sequence) => [sequence.later, sequence]));
  const columns = [
    { head: 'printing' },
    { head: 'came out' },
    { head: 'p', align: 'right' },
    { head: '95 % within' },
    { head: 'after the one above' },
  ] as const;
  const rows = order.flatMap((id, place): readonly Row[] => {
    const printing = byId.get(id);
    if (!printing) return [];
    const sequence = after.get(id);
    const above = order[place - 1] ?? '';
    const together = printing.together.includes(above);
    const release = [above, ...(byId.get(above)?.together ?? [])];
    const follows = sequence && release.includes(sequence.earlier) ? sequence : undefined;
    const inTurn = together ? 'same release' : follows ? inOrder(follows) : '';
    return [[called.printing(id), ...dayCells(printing), inTurn], ...doubts(printing)];
  });
  return tableOf(columns, rows, width);
}

function dayCells({ best, p_best, interval95, state }: DatedPrinting): readonly string[] {
  if (best === null || interval95 === null) return ['not known', '', ''];
  const [first, last] = interval95;
  const run = first === last ? 'that day' : runInWords(first, last);
  if (state === 'bounded') return ['no dated claim', '', run];
  return [
    state === 'day' ? sayDay(dayFrom(best), true) : `${sayDay(dayFrom(best), true)} ?`,
    percent(p_best),
    run,
  ];
}

function inOrder({ p, p_same_day, stated }: Sequence): string {
  if (stated) return 'stated';
  return p_same_day >= 0.5 ? `same day ${percent(p_same_day)}` : percent(p);
}

function doubts({ modes, state }: DatedPrinting): readonly string[] {
  if (state === 'open') return ['nothing bounds it'];
  if (state === 'bounded') return ['only what the sequence and the rest of the dossier leave'];
  if (modes.length < 2) return [];
  const peaks = modes.map(({ from, to, p }) => `${runInWords(from, to)} (${percent(p)})`);
  return [`either ${peaks.join(' or ')}`];
}

/** Slips printing by printing; a claim on several printings of one release stands once. */
function slipsReport(printings: readonly DatedPrinting[], called: Called, width: number): string {
  const columns = [
    { head: 'row', align: 'right' },
    { head: 'source' },
    { head: 'says' },
    { head: 'most probably' },
  ] as const;
  const seen = new Set<number>();
  const rows = printings.flatMap(({ id, claims }): readonly Row[] => {
    const slips = claims.filter(({ slip, row }) => slip && !seen.has(row));
    for (const { row } of slips) seen.add(row);
    const said = slips.map((claim) => [
      String(claim.row),
      called.source(claim.source),
      sayClaim(claim),
      `${claim.explanation} (${percent(claim.p_reading)}; right ${percent(claim.p_right)})`,
    ]);
    return slips.length > 0 ? [`${called.printing(id)}:`, ...said] : [];
  });
  return tableOf(columns, rows, width);
}

function sayClaim({ property, value }: DatedPrinting['claims'][number]): string {
  const said = sayEdtf(value, true);
  return property === 'on-sale' ? said : `${property.replaceAll('-', ' ')} ${said}`;
}

/** A run of days with its months short. */
function runInWords(first: string, last: string): string {
  return sayRun(dayFrom(first), dayFrom(last), true);
}

function leadsReport({ leads }: Dating, called: Called, width: number): string {
  const columns = [{ head: 'bits', align: 'right' }, { head: 'on' }, { head: 'evidence' }] as const;
  const rows = leads.map(({ gain_bits, printing, words }) => [
    gain_bits.toFixed(2),
    called.printing(printing),
    words,
  ]);
  return tableOf(columns, rows, width);
}
