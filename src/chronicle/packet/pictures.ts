import type { Block, Run } from '../paper/types.ts';
import { small } from './blocks.ts';
import type { PacketGround, PacketPicture } from './types.ts';

/** The pictures as taken, each with its time and its hash. */
export function pictureBlocks({ pictures }: PacketGround): readonly Block[] {
  if (pictures.length === 0) return [];
  const shown = pictures.flatMap((picture) =>
    picture.shown === null
      ? []
      : [{ file: picture.shown, alternative: alternativeOf(picture), caption: captionOf(picture) }],
  );
  return [
    { is: 'heading', level: 1, text: 'Pictures' },
    small(
      'Hashes are SHA-256. “As taken” is that of the original file, which stays with its owner; where a file was packed otherwise, “here” is that of the file in this packet.',
    ),
    { is: 'pictures', across: 5, height: 32, pictures: shown },
  ];
}

function alternativeOf({ name, side, role }: PacketPicture): string {
  return `Picture ${name}: ${[role, side].filter(Boolean).join(', ')}`;
}

function captionOf(picture: PacketPicture): readonly Run[] {
  const { name, role, taken, asTaken, asPacked, changed, noted } = picture;
  const when = taken === '' ? 'time not stated' : taken.replace('T', ' ');
  return [
    { text: name, style: 'strong' },
    { text: `\n${[role, when].filter(Boolean).join(', ')}\nas taken ` },
    { text: grouped(asTaken), style: 'code' },
    ...(changed === 'nothing'
      ? []
      : ([
          { text: `\nhere (${CHANGED[changed]}) ` },
          { text: grouped(asPacked), style: 'code' },
        ] as const)),
    ...(noted !== '' && noted !== asTaken
      ? ([{ text: '\nnot the file that was entered in the dossier', style: 'slip' }] as const)
      : []),
  ];
}

/** Digits in groups of eight, so that lines can break and eyes compare. */
function grouped(hash: string): string {
  return hash.replace(/.{8}(?=.)/g, '$& ');
}

/** What became of a file on its way. */
export const CHANGED: Readonly<Record<PacketPicture['changed'], string>> = {
  nothing: 'as taken',
  notes: 'notes cut out, picture untouched',
  anew: 'written anew without notes',
};
