import { cp, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  ChangedSchema,
  HistoriesSchema,
  LabelRowsSchema,
  LabelsSchema,
  LetterSchema,
  PopulationSchema,
  ReportReadSchema,
} from '../../contract/index.ts';
import { startTrial, type Trial } from '../fixtures/running.ts';

const SERVICE = 'ostrel';
const LABEL = 'NINEFEN · PUDELKO DROGI · 2007 · RB-5';

describe('the populations over the wire', () => {
  let trial: Trial;
  let folder: string;
  beforeAll(async () => {
    trial = await startTrial();
    folder = join(trial.root, 'demo');
    await cp('demo/dossier', folder, { recursive: true });
    await trial.ask('/api/open', { folder });
  });
  afterAll(() => trial.end());

  const population = async () => PopulationSchema.parse((await trial.ask('/api/population')).body);
  const labels = async () => LabelsSchema.parse((await trial.ask('/api/population/labels')).body);
  const named = async (label: string) =>
    (await labels()).labels.find((one) => one.service === SERVICE && one.label === label)!;
  const text = () => readFile(join(folder, 'population.csv'), 'utf8');
  const say = async (label: string, printing: string) => {
    const query = new URLSearchParams({ service: SERVICE, label });
    const { version, rows } = LabelRowsSchema.parse(
      (await trial.ask(`/api/population/rows?${query}`)).body,
    );
    const changes = rows.map(({ row, cells }) => ({
      ...{ file: 'population.csv', op: 'replace', row, before: cells },
      after: { ...cells, printing },
    }));
    const made = await trial.ask('/api/changes', { version, label: 'Match a label', changes });
    expect(ChangedSchema.parse(made.body).conflicts).toEqual([]);
  };

  it('tell the same counts as the command, with a total for each report', async () => {
    const { on, services, printings } = await population();
    expect(on).toBe('2026-06-30');
    const ostrel = services.find(({ id }) => id === SERVICE)!;
    expect(ostrel.reports.map(({ as_of }) => as_of)).toContain('2026-06-30');
    for (const { services: counts } of printings)
      for (const { service, total, course } of counts) {
        const of = services.find(({ id }) => id === service)!;
        expect(course).toHaveLength(of.reports.length);
        expect(course.at(-1)).toBeCloseTo(total, 6);
      }
  });

  it('give a printing’s counts by grade that add up to its total', async () => {
    const { printings, services } = await population();
    for (const { id, services: counts } of printings.slice(0, 4)) {
      const { histories } = HistoriesSchema.parse(
        (await trial.ask(`/api/population/of/${id}`)).body,
      );
      expect(histories.map(({ service }) => service)).toEqual(counts.map(({ service }) => service));
      histories.forEach(({ service, share, snapshots }, at) => {
        const grades = services.find((one) => one.id === service)!.grades.length;
        const graded = snapshots.at(-1)!.counts.slice(0, grades);
        const sum = graded.reduce((all, count) => all + count, 0);
        expect(share * sum).toBeCloseTo(counts[at]!.total, 6);
      });
    }
    expect((await trial.ask('/api/population/of/nobody')).status).toBe(404);
  });

  it('take a word on a label, follow it, and give it back to undo', async () => {
    const before = await named(LABEL);
    const untouched = await text();
    expect([before.confirmed, before.matches[0]?.printing]).toEqual([[], 'pl-road']);
    expect(before.matches[0]).toMatchObject({ agrees: ['number', 'year'], differs: ['product'] });
    await say(LABEL, 'none');
    const rejected = await named(LABEL);
    expect([rejected.confirmed, rejected.matches]).toMatchObject([
      null,
      [{ printing: null, p: expect.closeTo(1, 9) }],
    ]);
    await say(LABEL, 'pl-road|kr-road-foil');
    const split = await named(LABEL);
    expect(split.confirmed).toEqual(['pl-road', 'kr-road-foil']);
    const held = split.matches.filter(({ p }) => p > 0.05).map(({ printing }) => printing);
    expect(held.sort()).toEqual(['kr-road-foil', 'pl-road']);
    expect(split.matches.slice(0, 2).every(({ p }) => p > 0.5)).toBe(true);
    await trial.ask('/api/undo', {});
    await trial.ask('/api/undo', {});
    expect(await text()).toBe(untouched);
    expect(await named(LABEL)).toEqual(before);
  });

  it('preview a pasted report, and write nothing', async () => {
    const before = await text();
    const pasted = 'label\t9.5\t10\ttotal\nNINEFEN · ONE\t3\t1\t5\n';
    const ask = async (as_of: string) =>
      ReportReadSchema.parse(
        (await trial.ask('/api/population/report', { service: SERVICE, as_of, text: pasted })).body,
      );
    const { counts, faults, there } = await ask('2026-07-31');
    expect(counts.map(({ grade, count }) => [grade, count])).toEqual([
      ['9.5', 3],
      ['10', 1],
    ]);
    expect(faults[0]?.expected).toBe('4, the sum of the grades');
    expect([there, (await ask('2026-06-30')).there]).toEqual([false, true]);
    expect(await text()).toBe(before);
    const nobody = { service: 'nobody', as_of: '2026-07-31', text: pasted };
    expect((await trial.ask('/api/population/report', nobody)).status).toBe(404);
  });

  it('write a letter to a service that has something to mend, and none to one that has not', async () => {
    const letters = await Promise.all(
      (await population()).services.map(
        async ({ id }) =>
          LetterSchema.parse((await trial.ask(`/api/population/letter?service=${id}`)).body).letter,
      ),
    );
    expect(letters.some((letter) => letter?.startsWith('To '))).toBe(true);
    expect((await trial.ask('/api/population/letter')).status).toBe(400);
  });
});
