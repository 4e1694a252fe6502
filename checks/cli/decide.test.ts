import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { answerTo, inputPath } from './answer.ts';

const demo = 'demo/dossier';
const folder = mkdtempSync(join(tmpdir(), 'printlore-decide-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Copy {
  id: string;
  landed_cost: string | null;
  keep: number | null;
  return: number | null;
  complain: number | null;
  submit: { expected_gain: number } | null;
  options: { service: string; tier: string; expected_gain: number }[];
  advice: string;
  highest_bid: number | null;
}

describe('decide', async () => {
  const { exit, out, err } = await answerTo(['decide', demo, '--json']);
  const answer = JSON.parse(out) as { copies: Copy[]; batches: { copies: string[] }[] };
  const byId = new Map(answer.copies.map((one) => [one.id, one]));

  it('answers for every copy of the desk, without a fault', () => {
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect([...byId.keys()]).toEqual(['hare-1', 'hare-2', 'hare-3', 'hare-4']);
  });

  it('reckons landed costs to the cent', () => {
    // By hand: 29.00 and 41.00 GBP at 0.90657 for a euro (31 May 2026, the last before), parcel 6.50 and 1.20.
    const rate = 0.90657;
    const round = (value: number) => Math.round(100 * value + 1e-9) / 100;
    const goods = [round(29 / rate), round(41 / rate)];
    const sum = goods[0]! + goods[1]!;
    const carried = round(6.5 / rate) + round(1.2 / rate);
    const all = sum + carried + round(0.21 * (sum + carried)) + 3.2 + round(0.01 * (sum + carried));
    const both = Number(byId.get('hare-1')?.landed_cost) + Number(byId.get('hare-3')?.landed_cost);
    expect(both).toBeCloseTo(all, 9);
  });

  it('advises the greatest of what is open', () => {
    for (const one of answer.copies) {
      const submit = one.submit === null ? null : one.keep! + one.submit.expected_gain;
      const worth = { keep: one.keep, return: one.return, complain: one.complain, submit };
      const most = Math.max(...Object.values(worth).filter((value) => value !== null));
      expect(worth[one.advice as keyof typeof worth]).toBe(most);
    }
  });

  it('bids for what is offered alone, and less than it may fetch', () => {
    for (const one of answer.copies) expect(one.highest_bid !== null).toBe(one.id === 'hare-4');
    const offered = byId.get('hare-4');
    expect(offered?.highest_bid).toBeGreaterThan(0);
    expect(offered?.highest_bid).toBeLessThan(offered?.keep ?? 0);
  });

  it('sends in nothing that the budget does not pay for', async () => {
    // A tier that takes one copy at small postage; the demo's own wants five of them together.
    const cheap = join(folder, 'cheap');
    cpSync(demo, cheap, { recursive: true });
    const tiers = join(cheap, 'desk/tiers.csv');
    const own = readFileSync(tiers, 'utf8');
    writeFileSync(tiers, own.replace(',,5,60,14.00,9.00,', ',,1,60,1.40,0.90,'));
    const sentIn = async (...budget: string[]) => {
      const { out } = await answerTo(['decide', cheap, '--json', ...budget]);
      return (JSON.parse(out) as typeof answer).batches.flatMap(({ copies }) => copies);
    };
    expect(await sentIn()).toEqual(['hare-1']);
    expect(await sentIn('--budget', '5')).toEqual([]);
    expect(answer.batches).toEqual([]);
  });

  it('writes the deadlines that run into a calendar, and tells a person why', async () => {
    const file = join(folder, 'deadlines.ics');
    const told = await answerTo(['decide', demo, '--calendar', file]);
    const calendar = readFileSync(file, 'utf8');
    expect(calendar.match(/BEGIN:VEVENT/g)).toHaveLength(2);
    expect(calendar).toContain('DTSTART;VALUE=DATE:20260701');
    for (const words of ['Hinges on:', 'seller 1 Jul 2026 (1 day)', 'no promise', 'bid up to'])
      expect(told.out).toContain(words);
  });

  it('refuses a call that it cannot answer', async () => {
    for (const wrong of [[inputPath('bare')], [demo, '--budget', '-5'], [demo, '--on', 'soon']])
      expect((await answerTo(['decide', ...wrong])).exit).toBe(2);
  });
});
