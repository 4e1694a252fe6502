import { readFile } from 'node:fs/promises';
import type { Dossier } from '../../dossier/index.ts';
import { type PastedReport, readReport, type Service } from '../../population/index.ts';
import { addRows } from '../added.ts';
import { reasonOf } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { tableOf } from '../report/table.ts';
import { wrapped } from '../report/width.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

const MOST_BYTES = 32_000_000;
const FILE = 'population.csv';

/** Shows what a pasted report says, and writes it to the dossier where that was asked for. */
export async function addReport(
  folder: string,
  dossier: Dossier,
  service: Service | undefined,
  file: string,
  { asOf, write = false, json = false }: { asOf?: string; write?: boolean; json?: boolean },
  terminal: Terminal,
): Promise<0 | 1> {
  if (service === undefined) throw new WrongCall('--add needs --service: whose report is it?');
  if (asOf === undefined) throw new WrongCall('--add needs --as-of: when was the report read?');
  const report = readReport(await textOf(file), service);
  if (json) await writeJson(report, terminal);
  else await terminal.write(preview(report, service, asOf, terminal.width));
  const there = has(dossier, service.id, asOf);
  if (there && write)
    throw new WrongCall(
      `population.csv has a report of ${service.id} on ${asOf}: remove it first.`,
    );
  if (write && report.counts.length > 0) {
    const rows = report.counts.map(({ label, grade, count }) => ({
      service: service.id,
      as_of: asOf,
      label,
      printing: '',
      grade,
      count: String(count),
    }));
    await addRows(folder, FILE, rows);
    terminal.say(`Written to population.csv: ${counted(report.counts.length, 'row')}.\n`);
  } else if (!json) await terminal.write('Nothing is written yet; with --write it is.\n');
  return report.faults.length === 0 ? 0 : 1;
}

async function textOf(file: string): Promise<string> {
  const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  if (bytes.includes(0)) throw new WrongCall(`${file} is not a text.`);
  if (bytes.length > MOST_BYTES) throw new WrongCall(`${file} is longer than 32 MB.`);
  return new TextDecoder().decode(bytes);
}

function has({ tables }: Dossier, service: string, asOf: string): boolean {
  const table = tables.get(FILE);
  if (table === undefined) return false;
  for (const row of table.rows())
    if (table.value(row, 'service') === service && table.value(row, 'as_of') === asOf) return true;
  return false;
}

function preview(report: PastedReport, service: Service, asOf: string, width: number): string {
  const head = `A report of ${service.title ?? service.id} as of ${asOf}, read as ${report.form}.`;
  const words = [head, ...report.understood].flatMap((line) => wrapped(line, width));
  const grades = [...service.grades, ...service.offScale].filter((grade) =>
    report.counts.some((one) => one.grade === grade),
  );
  const byLabel = new Map(report.labels.map((label) => [label, new Map<string, number>()]));
  for (const { label, grade, count } of report.counts) byLabel.get(label)?.set(grade, count);
  const rows = [...byLabel].map(([label, counts]) => [
    label,
    ...grades.map((grade) => String(counts.get(grade) ?? 0)),
  ]);
  const columns = ['label', ...grades].map((name, at) => ({
    head: name,
    ...(at > 0 ? { align: 'right' as const } : {}),
  }));
  const faults = report.faults.flatMap(({ line, found, expected, fate }) => {
    const place = line === null ? '' : `line ${line}: `;
    return wrapped(`${place}found “${found}”, expected ${expected}. ${fate}`, width);
  });
  const table = rows.length > 0 ? `\n${tableOf(columns, rows, width)}\n` : '';
  return [...words, table, ...faults]
    .map((line) => (line === table ? table : `${line}\n`))
    .join('');
}
