import type { ToldPrinting } from '../account/types.ts';
import { releaseFactsOf } from '../words/sentences.ts';
import type { Sentence, Telling } from '../words/telling.ts';

/**
 * A draft of `story/ID.md` for a printing: its facts in plain sentences. Day, doubt and certainty of
 * the release are links, which each publication fills in anew; claims cite their sources.
 */
export function draftOf(printing: ToldPrinting, telling: Telling): string {
  const { id, release } = printing;
  const [when, ...rest] = releaseFactsOf(printing, telling);
  const value = (part = '') => `[](value:release.${id}${part})`;
  const { onDay } = telling.phrases.sentences;
  const first =
    release.state === 'day'
      ? onDay(value('.how'), value(), value('.doubt'))
      : escaped(when?.text ?? '');
  const facts = rest.map((fact) => `- ${cited(fact, printing, telling)}`);
  return [`# ${escaped(telling.called(id))}`, '', first, '', ...facts, ''].join('\n');
}

/** A sentence about a claim, with its source as a link. */
function cited({ figure, text }: Sentence, { release }: ToldPrinting, telling: Telling): string {
  const claim = release.claims.find(({ key }) => key === figure);
  if (claim === undefined) return escaped(text);
  const title = escaped(telling.source(claim.source));
  return escaped(text).replace(title, `[${title}](source:${claim.source})`);
}

/** Words of the dossier are no mark-up. */
function escaped(text: string): string {
  return text.replace(/[\\`*_[\]<>#]/g, (sign) => `\\${sign}`);
}
