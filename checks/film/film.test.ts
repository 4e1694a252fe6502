import { readdirSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type Account,
  frozenOf,
  inOrder,
  lettersOf,
  listedIds,
  movedFigures,
  phrasesOf,
  plannedCut,
  readingPage,
  scriptOf,
  stillsOf,
  tellFigure,
} from '../../src/chronicle/index.ts';
import { filmInto, type Told } from '../../src/press/index.ts';
import { DEMO, toldDemo } from '../chronicle/account.ts';
import { answerTo } from '../cli/answer.ts';

let account: Account;
let folder: string;
beforeAll(async () => {
  account = (await toldDemo()).account;
  folder = await mkdtemp(join(tmpdir(), 'printlore-film-'));
}, 120_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

const script = (order: 'oldest' | 'newest' = 'oldest') =>
  scriptOf(account, { language: 'en', order, rate: 160 });

describe('the script', () => {
  it('tells the oldest first, the newest first, or what a list names', () => {
    const ids = account.printings.map(({ id }) => id);
    expect(script().scenes.map(({ id }) => id)).toEqual(['index', ...ids]);
    expect(script('newest').scenes.map(({ id }) => id)).toEqual(['index', ...ids.reverse()]);
    const { ids: listed, unknown } = listedIds('# mine\nkr-club\n\nno-such\ngb-first\n', account);
    expect(inOrder(account, listed).map(({ id }) => id)).toEqual(['kr-club', 'gb-first']);
    expect(unknown).toEqual([{ row: 4, found: 'no-such' }]);
  });

  it('says values in the collector’s own words, and names their figures', () => {
    const value = account.figures.find(({ name }) => name === 'printings')!;
    const line = script().scenes[0]?.lines.find(({ figures }) => figures.includes('printings'));
    expect(line?.text).toContain(tellFigure(value, account, phrasesOf('en')));
    expect(line?.text).not.toMatch(/[[\]]|value:/);
  });

  it('spells out every digit but those of foreign names, and gives each line its time', () => {
    const lines = script().scenes.flatMap((scene) => scene.lines);
    expect(lines.length).toBeGreaterThan(60);
    expect(lines.filter(({ seconds }) => !(seconds > 0 && seconds < 60))).toEqual([]);
    expect(
      lines.filter(({ spoken }) => /(?<![\p{L}\d])\d(?!\p{Script=Hangul})/u.test(spoken)),
    ).toEqual([]);
  });

  it('tells how foreign names are said', () => {
    const scene = script().scenes.find(({ id }) => id === 'kr-monthly');
    expect(scene?.names).toEqual([{ written: '밀물종 토끼', said: 'milmuljong tokki' }]);
  });
});

describe('what was said', () => {
  it('holds where nothing moved', () => {
    const frozen = frozenOf(script(), account);
    expect(frozen.figures.length).toBeGreaterThan(30);
    expect(movedFigures(frozen, account)).toEqual([]);
  });

  it('is listed with both values and the reason where a figure moved', () => {
    const frozen = frozenOf(script(), account);
    const name = 'release.kr-monthly';
    const figures = account.figures.map((figure) =>
      figure.name === name && figure.value.is === 'release'
        ? {
            ...figure,
            claims: [...figure.claims, 'x.on-sale.y'],
            value: { ...figure.value, p: 0.61 },
          }
        : figure,
    );
    const [moved, ...rest] = movedFigures(frozen, { ...account, figures });
    expect(rest).toEqual([]);
    expect(moved).toMatchObject({ name, why: 'New claims: x.on-sale.y.' });
    expect(moved?.was).toMatch(/\(0\.\d\d\)$/);
    expect(moved?.is).toBe(moved?.was.replace(/\(.*\)$/, '(0.61)'));
    const gone = movedFigures(frozen, {
      ...account,
      figures: figures.filter((one) => one.name !== name),
    });
    expect(gone.map(({ name: one, is }) => [one, is])).toEqual([[name, null]]);
  });
});

describe('stills', () => {
  const stills = () =>
    stillsOf(account, {
      language: 'en',
      printings: new Set(account.printings.map(({ id }) => id)),
      pictures: new Map(),
      measure: (text, _face, size) => text.length * size * 0.5,
    });

  it('hold no text under 28 pixels, in both shapes, and are the same each time', () => {
    const all = stills();
    const sizes = all.flatMap(({ svg }) =>
      [...svg.matchAll(/font-size="([\d.]+)"/g)].map((m) => Number(m[1])),
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(28);
    expect(new Set(all.map(({ frame }) => `${frame.width}x${frame.height}`))).toEqual(
      new Set(['1920x1080', '1080x1920']),
    );
    expect(stills()).toEqual(all);
    expect(lettersOf(all)).toContain('월');
  });

  it('tell a title, a place and a strip of every printing', () => {
    const names = new Set(stills().map(({ file }) => file));
    for (const { id } of account.printings)
      for (const kind of ['title', 'place']) expect(names).toContain(`stills/wide/${id}-${kind}`);
    expect(names).toContain('overlays/tall/kr-club-lower-third');
  });

  it('keep what is marked to stay at home', () => {
    const text = stills()
      .map(({ svg }) => svg)
      .join('');
    expect(text).toContain('staple marks');
    expect(text).not.toMatch(/175±4|>dull</);
  });
});

describe('the page to read from', () => {
  it('is one file that asks for nothing, and takes text for text', () => {
    const evil = { ...script(), title: '<script>alert(1)</script>' };
    const page = readingPage(evil);
    expect(page).not.toMatch(/(src|href)=|@import|url\(|fetch\(|https?:/);
    expect(page.match(/<script>/g)?.length).toBe(1);
    expect(page).toContain('&lt;script&gt;alert(1)');
  });
});

describe('the kit', () => {
  const silent = { begins: () => {}, leaves: () => {} };
  /** The kit of one printing, without a picture, in a language of its own. */
  const film = (place: string, language: 'en' | 'pt' | 'ko', told: Told = silent) => {
    const cut = plannedCut(scriptOf(account, { language, order: ['fi-tin'], rate: 160 }));
    const options = { recording: null, freezes: true };
    return filmInto(join(place, 'film'), DEMO, account, cut, options, told);
  };
  /** Every file of a folder with its text. */
  const filesIn = async (place: string) => {
    const names = await readdir(join(place, 'film'), { recursive: true });
    const texts = names.map((name) => readFile(join(place, 'film', name), 'utf8').catch(() => ''));
    return new Map((await Promise.all(texts)).map((text, i) => [names[i] as string, text]));
  };
  const inPlace = async (act: (place: string) => Promise<void>) => {
    const place = await mkdtemp(join(tmpdir(), 'printlore-kit-'));
    await act(place).finally(() => rm(place, { recursive: true, force: true }));
  };

  it('is left as it was where the making of another stops midway', () =>
    inPlace(async (place) => {
      await film(place, 'en');
      const before = await filesIn(place);
      expect(before.get('spoken.json')).toContain('printlore-film/1');
      let begun = 0;
      const stopped = film(place, 'pt', {
        ...silent,
        begins: (step) => {
          if (!step.startsWith('Still 4 ')) return;
          const [draft = ''] = readdirSync(place).filter((name) => name.startsWith('.film.new-'));
          begun = readdirSync(join(place, draft, 'stills', 'wide')).length;
          throw new Error('stopped');
        },
      });
      await expect(stopped).rejects.toThrow('stopped');
      expect(begun).toBeGreaterThan(0);
      expect(await filesIn(place)).toEqual(before);
      expect(await readdir(place)).toEqual(['film']);
    }));

  it('leaves recordings, keeps what an earlier film said, and draws nothing anew of the same', () =>
    inPlace(async (place) => {
      await film(place, 'en');
      const first = await filesIn(place);
      await writeFile(join(place, 'film', 'take-1.mp4'), 'a recording');
      await film(place, 'en');
      expect(await filesIn(place)).toEqual(first.set('take-1.mp4', 'a recording'));
      const spoken = ['spoken.json', 'spoken-1.json', 'spoken-2.json'];
      await film(place, 'pt');
      const second = await filesIn(place);
      expect(second.get('take-1.mp4')).toBe('a recording');
      expect(spoken.map((name) => second.has(name))).toEqual([true, true, false]);
      expect(second.get('spoken-1.json')).toBe(first.get('spoken.json'));
      await film(place, 'ko');
      const third = await filesIn(place);
      expect(third.get('spoken-2.json')).toBe(second.get('spoken.json'));
      expect(third.get('spoken-1.json')).toBe(first.get('spoken.json'));
    }));
});

describe('the command', () => {
  it.each([
    [['film', 'demo/dossier'], '--out with a folder for the kit is wanted'],
    [['film', 'demo/dossier', '--out', 'x', '--write'], '--write needs --marks'],
    [
      ['film', 'demo/dossier', '--out', 'x', '--rate', 'fast'],
      'Words a minute from 40 to 400 are expected',
    ],
    [
      ['film', 'demo/dossier', '--check', 'demo/dossier/dossier.json'],
      'does not hold what a film said',
    ],
  ])('%j is a wrong call', async (words, says) => {
    const { exit, err } = await answerTo(words);
    expect(err).toContain(says);
    expect(exit).toBe(2);
  });

  it('names the line of marks that it cannot read', async () => {
    const file = join(folder, 'marks.txt');
    await writeFile(file, '0:01 line index.1\nlater line index.2\n');
    const { exit, err } = await answerTo([
      'film',
      'demo/dossier',
      '--out',
      folder,
      '--marks',
      file,
    ]);
    expect(err).toContain(
      'line 2: found “later line index.2”, expected a time such as 0:01:02.500',
    );
    expect(exit).toBe(2);
  });

  it('lists the spoken figures that no longer hold, and ends with 1', {
    timeout: 300_000,
  }, async () => {
    const frozen = frozenOf(script(), account);
    const [first, ...others] = frozen.figures;
    const file = join(folder, 'spoken.json');
    await writeFile(
      file,
      JSON.stringify({ ...frozen, figures: [{ ...first!, said: '3 printings' }, ...others] }),
    );
    const { exit, out } = await answerTo(['film', 'demo/dossier', '--check', folder]);
    expect(out).toContain(`${first!.name} (${first!.lines.join(', ')})`);
    expect(out).toContain('said: 3 printings');
    expect(out).toContain('of which 1 no longer hold:');
    expect(exit).toBe(1);
    expect(await readFile(file, 'utf8')).toContain('3 printings');
  });
});
