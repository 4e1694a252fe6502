import type { ToldPicture } from '../account/types.ts';
import type { Block } from '../paper/types.ts';
import { pictureSays } from '../site/cells.ts';
import { said } from './blocks.ts';
import type { Writer } from './types.ts';

/** Pictures beside each other, and their height in millimetres. */
const [ACROSS, HIGH] = [4, 44];

/** The pictures of a printing or kind, each with who took it and why it may be shown. */
export function pictureBlocks(
  pictures: readonly ToldPicture[],
  name: string,
  { words, pictures: onPaper }: Writer,
): readonly Block[] {
  const shown = pictures.flatMap((picture) => {
    const file = onPaper.get(picture.file);
    if (file === undefined) return [];
    const { alternative, caption } = pictureSays(picture, name, words);
    return [{ file, alternative, caption: said(caption) }];
  });
  return shown.length === 0
    ? []
    : [{ is: 'pictures', across: ACROSS, height: HIGH, pictures: shown }];
}
