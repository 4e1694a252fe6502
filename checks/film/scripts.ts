import { readingTime, type Scene, type Script, sayAloud } from '../../src/chronicle/index.ts';

/** A script of so many sentences a scene, as one that is read. */
export function scriptOf(
  scenes: Readonly<Record<string, readonly string[]>>,
  language = 'en',
  rate = 160,
): Script {
  return {
    title: 'Tidebell Hare',
    language,
    asOf: '2026-06-30',
    rate,
    scenes: Object.entries(scenes).map(
      ([id, texts]): Scene => ({
        id,
        title: `About ${id}`,
        names: [],
        lines: texts.map((text, i) => {
          const spoken = sayAloud(text, language);
          const seconds = readingTime(spoken, language, rate);
          return { id: `${id}.${i + 1}`, text, spoken, figures: [], seconds };
        }),
      }),
    ),
  };
}

/** Two scenes of three and two sentences. */
export const TWO = scriptOf({
  one: [
    'The hare first rang its bell between the pages of a Finnish comic fortnightly, half a year before the game it belongs to could be bought anywhere.',
    'It most probably came out on 4 July 1994.',
    'Nobody has found a dated word on the club card.',
  ],
  two: ['The second wave prints the bell paler.', 'It came out between 4 and 19 May 1995.'],
});
