import type { Account } from '../../account/types.ts';
import { tellEdtf } from '../../words/days.ts';
import { phrasesOf } from '../../words/languages.ts';
import type { Language } from '../../words/types.ts';
import { countsStill } from './counts.ts';
import { lowerThird } from './lower-third.ts';
import { placeStill } from './place.ts';
import { pointedStill } from './pointed.ts';
import type { Around } from './sheet.ts';
import { titleStill } from './title.ts';
import { type ToldOnStill, toldOnStills } from './told.ts';
import { FRAMES, type Frame, type Measure, type Still, type StillPicture } from './types.ts';

/** What stills are drawn with. */
export interface StillWish {
  readonly language: Language;
  /** Printings that are told. */
  readonly printings: ReadonlySet<string>;
  /** One picture a printing that may be published. */
  readonly pictures: ReadonlyMap<string, StillPicture>;
  readonly measure: Measure;
}

/**
 * The stills and overlays of a film, wide and tall: for each printing its day with the doubt, the
 * card with its traits pointed at, counts as of their day, and its place in the chronology; and a
 * strip over the lower third, see-through round it.
 */
export function stillsOf(account: Account, wish: StillWish): readonly Still[] {
  const phrases = phrasesOf(wish.language);
  const all = toldOnStills(account, phrases);
  const asOf =
    account.asOf === null
      ? ''
      : phrases
          .asOf('', tellEdtf(phrases, account.asOf))
          .trim()
          .replace(/^[(（]|[)）]$/g, '');
  const around: Around = { subject: account.subject.title, asOf, measure: wish.measure };
  return all
    .filter(({ printing }) => wish.printings.has(printing.id))
    .flatMap((told) => FRAMES.flatMap((frame) => ofPrinting(told, all, frame)));

  function ofPrinting(
    told: ToldOnStill,
    every: readonly ToldOnStill[],
    frame: Frame,
  ): readonly Still[] {
    const { id } = told.printing;
    const drawn: readonly (readonly [string, string | null])[] = [
      ['title', titleStill(told, frame, around)],
      ['card', pointedStill(told, wish.pictures.get(id), account.subject, frame, around)],
      ['counts', countsStill(told, frame, around, account, phrases)],
      ['place', placeStill(told, every, frame, around)],
      ['lower-third', lowerThird(told, frame, asOf, wish.measure)],
    ];
    return drawn.flatMap(([kind, svg]) => {
      const folder = kind === 'lower-third' ? 'overlays' : 'stills';
      return svg === null ? [] : [{ file: `${folder}/${frame.name}/${id}-${kind}`, frame, svg }];
    });
  }
}

/** Every letter in some drawings, for the fonts that they are set in. */
export function lettersOf(stills: readonly Still[]): string {
  const text = stills
    .map(({ svg }) =>
      [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((match) => match[1]).join(''),
    )
    .join('');
  const plain = text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
  return [...new Set(plain)].sort().join('');
}
