import type { Account, ToldPrinting } from '../../account/types.ts';
import { phrasesOf } from '../../words/languages.ts';
import { namesIn } from '../../words/names.ts';
import { factsOf } from '../../words/sentences.ts';
import { tellingOf, type Telling as Words } from '../../words/telling.ts';
import type { Language } from '../../words/types.ts';
import { type Pronounced, sayAloud } from '../spoken/index.ts';
import type { Line, Scene, Script } from '../types.ts';
import { inOrder, type Telling } from './order.ts';
import { type Prose, proseOf } from './prose.ts';
import { readingTime } from './reading-time.ts';
import { sentencesIn } from './sentences.ts';

/** How a script is wanted. */
export interface ScriptWish {
  readonly language: Language;
  readonly order: Telling;
  /** Words a minute. */
  readonly rate: number;
}

/**
 * The script of a film: the story of the whole, then for each printing its facts and its story,
 * sentence by sentence, with the names of the figures in them. Nothing is said that neither the
 * account nor the collector says.
 */
export function scriptOf(account: Account, wish: ScriptWish): Script {
  const phrases = phrasesOf(wish.language);
  const telling = tellingOf(account, phrases);
  const names = namesIn(account, phrases);
  const { title } = account.subject;
  const scenes = [
    sceneOf('index', title, wish, [], proseOf(account.story, account, phrases)),
    ...inOrder(account, wish.order).map((printing) => {
      const { id } = printing;
      const called = names.get(id)?.short ?? id;
      const said = pronounced(printing, wish.language);
      return sceneOf(id, called, wish, said, told(printing, called, telling));
    }),
  ];
  return {
    title,
    language: wish.language,
    asOf: account.asOf,
    rate: wish.rate,
    scenes: scenes.filter(({ lines }) => lines.length > 0),
  };
}

/** The name, so that a scene begins with what it is about, the facts, and the story. */
function told(printing: ToldPrinting, called: string, telling: Words): Prose {
  const { account, phrases } = telling;
  const facts = factsOf(printing, telling)
    .filter(({ figure }) => !figure.startsWith('price.') || figure === `price.${printing.id}`)
    .map(({ figure, text }) => ({ text, figures: [figure] }));
  const stop = phrases.language === 'ja' ? '。' : '.';
  const name = { text: `${called}${stop}`, figures: [] };
  return [name, ...facts, ...proseOf(printing.story, account, phrases)];
}

function sceneOf(
  id: string,
  title: string,
  { language, rate }: ScriptWish,
  names: readonly Pronounced[],
  prose: Prose,
): Scene {
  const sentences = prose.flatMap(({ text, figures }) =>
    sentencesIn(text).map((sentence) => ({ text: sentence, figures })),
  );
  const lines = sentences.map(({ text, figures }, i): Line => {
    const spoken = sayAloud(text, language, names);
    const seconds = readingTime(spoken, language, rate);
    return { id: `${id}.${i + 1}`, text, spoken, figures, seconds };
  });
  return { id, title, names, lines };
}

/** The printed name by its reading, where it is in another language than the film. */
function pronounced({ cells }: ToldPrinting, language: Language): readonly Pronounced[] {
  const { printed_name: written, reading: said } = cells;
  if (!written || !said || cells.language?.split('-')[0] === language) return [];
  return [{ written, said }];
}
