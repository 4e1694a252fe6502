import type { Evidence } from '../evidence/index.ts';
import type { Population } from './types.ts';

/** From this probability on a fault of a report is written to its service. */
const SURE = 0.8;

/**
 * A letter to a grading service that asks it to mend its report: labels that hold several printings,
 * printings that it has graded and does not list, labels that say another thing than the card. Every
 * point with its evidence; null where there is none. It accuses nobody and asks for nothing else.
 *
 * @param name what a printing is called
 */
export function letterTo(
  service: string,
  title: string,
  answer: Population,
  evidence: Evidence,
  name: (id: string) => string,
): string | null {
  const points = [
    ...lumpPoints(service, answer, evidence, name),
    ...missingPoints(service, answer, name),
    ...mislabelledPoints(service, answer, name),
    ...fallPoints(service, answer),
  ];
  if (points.length === 0) return null;
  return [
    `To ${title}: about the population report${answer.on === null ? '' : `, as of ${answer.on}`}`,
    'I follow every printing of one card and use your report. In the following places it could serve collectors better; the evidence stands beside each.',
    ...points.map((point, at) => `${at + 1}. ${point}`),
    'Pictures of front and back of the copies concerned can be sent. Thank you for looking into it.',
    '',
  ].join('\n\n');
}

function lumpPoints(
  service: string,
  answer: Population,
  evidence: Evidence,
  name: (id: string) => string,
): string[] {
  const byLabel = new Map<string, string[]>();
  for (const match of answer.matches) {
    if (match.service !== service || match.printing === null || match.p < SURE) continue;
    byLabel.set(match.label, [...(byLabel.get(match.label) ?? []), match.printing]);
  }
  return [...byLabel].flatMap(([label, ids]) => {
    if (ids.length < 2) return [];
    const told = differences(ids, evidence);
    const seen = ids.map((id) => {
      const count =
        answer.printings.find((one) => one.id === id)?.looked[`${service}\n${label}`] ?? 0;
      return `${name(id)}${count > 0 ? ` (${count} seen under this label)` : ''}`;
    });
    const apart = told === '' ? '' : ` They are told apart by ${told}.`;
    return `The label “${label}” holds more than one printing: ${seen.join('; ')}.${apart} Please list them under labels of their own.`;
  });
}

/** The columns in which printings differ, with what each has. */
function differences(ids: readonly string[], evidence: Evidence): string {
  const rows = ids.map((id) => evidence.printings.find((one) => one.id === id));
  const columns = ['number', 'finish', 'edition', 'wave', 'art', 'product', 'market'] as const;
  return columns
    .flatMap((column) => {
      const values = rows.map((row) => row?.[column] ?? '?');
      return new Set(values).size > 1 ? `${column} (${values.join(' / ')})` : [];
    })
    .join(', ');
}

/** Printings of which slabs of the service were seen, and which it lists nowhere. */
function missingPoints(
  service: string,
  answer: Population,
  name: (id: string) => string,
): string[] {
  return answer.printings.flatMap(({ id, services, certificates }) => {
    const seen = certificates[service] ?? [];
    if (seen.length === 0 || services.some((one) => one.service === service)) return [];
    return `${name(id)} is not in the report, though you have certified copies of it: ${seen.slice(0, 5).join(', ')}. Please list it.`;
  });
}

/** Copies that were seen under a label which is another printing's. */
function mislabelledPoints(
  service: string,
  { matches, printings }: Population,
  name: (id: string) => string,
): string[] {
  return matches.flatMap(({ service: of, label, printing: owner, p }) => {
    if (of !== service || owner === null || p < SURE) return [];
    return printings.flatMap(({ id, looked }) => {
      const count = looked[`${service}\n${label}`] ?? 0;
      const own = matches.find((m) => m.service === of && m.label === label && m.printing === id);
      if (count === 0 || id === owner || (own?.p ?? 0) > 1 - SURE) return [];
      const copies = count === 1 ? 'a copy' : `${count} copies`;
      return `Under the label “${label}”, which is that of ${name(owner)}, ${copies} of ${name(id)} ${count === 1 ? 'was' : 'were'} seen. Please see which label is meant for it.`;
    });
  });
}

function fallPoints(service: string, answer: Population): string[] {
  return answer.falls
    .filter((fall) => fall.service === service && fall.grade === null)
    .slice(-3)
    .map(
      ({ label, before, from, to }) =>
        `The label “${label}” stood with ${before} in the report of ${from} and is not in that of ${to}. Please say under which label these copies are counted now.`,
    );
}
