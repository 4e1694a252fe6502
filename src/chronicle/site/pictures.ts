import type { ToldPicture, ToldTrait } from '../account/types.ts';
import { pictureSays } from './cells.ts';
import { type Html, html } from './html.ts';
import { marksList, marksSvg, placesOn } from './pointed.ts';
import type { SitePicture, Teller } from './types.ts';

/** The pictures of a printing or kind, with who took them and why they may be shown. */
export function picturesHtml(
  pictures: readonly ToldPicture[],
  name: string,
  path: string,
  teller: Teller,
  traits: readonly ToldTrait[] = [],
): Html | null {
  const root = '../'.repeat(path.split('/').length);
  const shown = pictures.flatMap((picture) => {
    const made = teller.ground.pictures.get(picture.file);
    return made === undefined ? [] : figureHtml(picture, made, name, root, teller, traits);
  });
  return shown.length === 0
    ? null
    : html`<section class="pictures" aria-label="${teller.words.pictures}">${shown}</section>`;
}

function figureHtml(
  picture: ToldPicture,
  made: SitePicture,
  name: string,
  root: string,
  teller: Teller,
  traits: readonly ToldTrait[],
): Html {
  const { words } = teller;
  const { stem, sizes, marks } = made;
  const file = ({ width }: { width: number }, kind: string) =>
    `${root}pictures/${stem}-${width}.${kind}`;
  const set = (kind: string) =>
    sizes.map((size) => `${file(size, kind)} ${size.width}w`).join(', ');
  const smallest = sizes[0] ?? { width: 1, height: 1 };
  const { alternative, caption } = pictureSays(picture, name, words);
  const sizesHint = '(max-width: 640px) 90vw, 320px';
  const places = marks ? placesOn(traits, faceOf(picture)) : [];
  return html`<figure><div class="face"><picture><source type="image/webp" srcset="${set('webp')}" sizes="${sizesHint}"><img src="${file(smallest, 'jpg')}" srcset="${set('jpg')}" sizes="${sizesHint}" width="${smallest.width}" height="${smallest.height}" loading="lazy" alt="${alternative}"></picture>${marksSvg(made)}</div><figcaption>${caption}</figcaption>${places.length > 0 && marksList(places, teller)}</figure>`;
}

/** The face of a card that a picture shows, as far as it is told. */
export function faceOf({ side }: Pick<ToldPicture, 'side'>): 'front' | 'back' {
  return side === 'back' ? 'back' : 'front';
}
