import type { Cut } from '../types.ts';
import type { Edit, Laid } from './timeline.ts';

/** Seconds that an overlay stands at the beginning of its scene. Judgement, no source. */
const OVERLAY = 8;

/**
 * Lays stills and overlays over their scenes: the overlay at the beginning, then the stills of the
 * scene one after the other, each for the same share of what is left.
 *
 * @param files names of the kit's pictures, `stills/wide/PRINTING-KIND.png`
 */
export function laidOver(
  cut: Cut,
  files: readonly string[],
  frame: 'wide' | 'tall',
): Edit['tracks'] {
  const scenes = [...new Set(cut.takes.map(({ scene }) => scene.id))].map((id) => {
    const takes = cut.takes.filter(({ scene }) => scene.id === id);
    const from = Math.min(...takes.map((take) => take.from));
    return { id, from, to: Math.max(...takes.map((take) => take.to)) };
  });
  const of = (folder: string, id: string) =>
    files.filter((file) => file.startsWith(`${folder}/${frame}/${id}-`) && kindOf(file, id));
  const stills = scenes.flatMap(({ id, from, to }): Laid[] => {
    const begin = Math.min(to, from + OVERLAY);
    const own = of('stills', id);
    const each = (to - begin) / Math.max(1, own.length);
    return own.map((file, i) => ({
      name: nameOf(file),
      file,
      from: begin + i * each,
      to: begin + (i + 1) * each,
    }));
  });
  const overlays = scenes.flatMap(({ id, from, to }): Laid[] =>
    of('overlays', id).map((file) => ({
      name: nameOf(file),
      file,
      from,
      to: Math.min(to, from + OVERLAY),
    })),
  );
  const inTime = (list: readonly Laid[]) =>
    [...list].filter((one) => one.to > one.from).sort((a, b) => a.from - b.from);
  return [
    { name: 'Stills', pictures: inTime(stills) },
    { name: 'Overlays', pictures: inTime(overlays) },
  ];
}

/** A file of this very printing, and not of one whose id begins with it. */
function kindOf(file: string, id: string): boolean {
  return /^(title|card|counts|place|lower-third)\.png$/.test(
    file.slice(file.lastIndexOf(`/${id}-`) + id.length + 2),
  );
}

function nameOf(file: string): string {
  return file.replace(/^.*\//, '').replace(/\.png$/, '');
}
