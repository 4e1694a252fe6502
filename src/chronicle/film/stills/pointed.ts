import type { Subject, ToldTrait } from '../../account/types.ts';
import { type Around, type Room, roomOn, sheet } from './sheet.ts';
import { box, escaped, INK, line, words } from './svg.ts';
import type { ToldOnStill } from './told.ts';
import { type Frame, LEAST, type StillPicture } from './types.ts';
import { fitted, paragraph, wrapped } from './wrap.ts';

/** Traits that are pointed at. */
const MOST = 6;

/** The card with its traits pointed at; null where there is neither a picture nor a trait with a place. */
export function pointedStill(
  told: ToldOnStill,
  picture: StillPicture | undefined,
  subject: Subject,
  frame: Frame,
  around: Around,
): string | null {
  const placed = told.printing.traits
    .filter(({ region }) => region?.face === 'front')
    .sort((a, b) => (a.region?.boxMm[1] ?? 0) - (b.region?.boxMm[1] ?? 0));
  if (picture === undefined && placed.length === 0) return null;
  const room = roomOn(frame);
  const tall = frame.name === 'tall';
  const size = { width: subject.widthMm ?? 63, height: subject.heightMm ?? 88 };
  const aspect = picture ? picture.width / picture.height : size.width / size.height;
  const high = tall ? Math.min(980, room.width / aspect) : room.height + 40;
  const card = {
    x: tall ? room.x + (room.width - high * aspect) / 2 : room.x,
    y: room.y - 10,
    width: high * aspect,
    height: high,
  };
  const pointable = picture === undefined || picture.toEdges ? placed : [];
  const traits = [
    ...pointable,
    ...told.printing.traits.filter((one) => !pointable.includes(one)),
  ].slice(0, MOST);
  const list = tall
    ? {
        x: room.x,
        y: card.y + high + 30,
        width: room.width,
        height: room.y + room.height - card.y - high - 30,
      }
    : {
        x: card.x + card.width + 150,
        y: room.y,
        width: room.x + room.width - card.x - card.width - 150,
        height: room.height,
      };
  return sheet(frame, around, told.place, [
    picture ? pictureAt(picture, card) : outlineAt(card, size),
    ...pointable.slice(0, MOST).map((trait, i) => pointer(trait, i, card, size, list, tall)),
    listed(told, traits, pointable, list, around, tall),
    ...(picture ? [credit(picture, room, around)] : []),
  ]);
}

function pictureAt({ href }: StillPicture, { x, y, width, height }: Room): string {
  return `<image x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${width.toFixed(1)}" height="${height.toFixed(1)}" href="${escaped(href)}"/>`;
}

/** A drawing in place of a picture: the card's outline with its size. */
function outlineAt({ x, y, width, height }: Room, size: { width: number; height: number }): string {
  const round = (width * 3) / size.width;
  return [
    `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${width.toFixed(1)}" height="${height.toFixed(1)}" rx="${round.toFixed(1)}" fill="${INK.lane}" stroke="${INK.third}" stroke-width="3"/>`,
    words(x + width / 2, y + height / 2, `${size.width} × ${size.height} mm`, {
      size: 44,
      fill: INK.third,
      anchor: 'middle',
    }),
  ].join('');
}

/** A frame round the place, and a leader to its number in the list. */
function pointer(
  { region }: ToldTrait,
  i: number,
  card: Room,
  size: { width: number; height: number },
  list: Room,
  tall: boolean,
): string {
  if (!region) return '';
  const scale = card.width / size.width;
  const [x0, y0, x1, y1] = region.boxMm.map((mm) => mm * scale) as [number, number, number, number];
  const [left, top] = [card.x + x0, card.y + y0];
  const frame = `<rect x="${left.toFixed(1)}" y="${top.toFixed(1)}" width="${(x1 - x0).toFixed(1)}" height="${(y1 - y0).toFixed(1)}" fill="none" stroke="${INK.cyan}" stroke-width="5"/>`;
  const middle = top + ((y1 - y0) * 1) / 2;
  const leader = tall
    ? ''
    : line(
        [
          [card.x + x1, middle],
          [card.x + card.width + 60, middle],
          [list.x - 20, entryAt(list, i, tall) - 14],
        ],
        INK.cyan,
        4,
      );
  const badge =
    box(left, top - 46, 46, 46, INK.cyanText) +
    words(left + 23, top - 10, String(i + 1), { size: 38, fill: INK.sheet, anchor: 'middle' });
  return frame + leader + badge;
}

function entryAt({ y }: Room, i: number, tall: boolean): number {
  return tall ? y + 50 + i * 100 : y + 190 + i * 116;
}

function listed(
  told: ToldOnStill,
  traits: readonly ToldTrait[],
  pointed: readonly ToldTrait[],
  room: Room,
  { measure }: Around,
  tall: boolean,
): string {
  const heading = { size: 60, face: 'serif' } as const;
  const title = tall
    ? ''
    : paragraph(
        room.x,
        room.y + 46,
        wrapped(told.name.short, room.width, heading, measure, 2),
        heading,
        1.12,
      );
  const shown = tall ? traits.slice(0, Math.floor(room.height / 100)) : traits;
  const entries = shown.map((trait, i) => {
    const y = entryAt(room, i, tall);
    const number = pointed.includes(trait) ? `${i + 1}  ` : '';
    const name = { size: LEAST, fill: INK.cyanText };
    const value = { size: 46 };
    return (
      words(room.x, y, fitted(`${number}${trait.trait}`, room.width, name, measure), name) +
      words(room.x, y + 52, fitted(trait.value, room.width, value, measure), value)
    );
  });
  return title + entries.join('');
}

/** Whose picture it is. */
function credit(
  { rights }: StillPicture,
  { x, y, width, height }: Room,
  { measure }: Around,
): string {
  const type = { size: LEAST, fill: INK.second };
  return words(x + width - 60, y + height + 92, fitted(rights, width * 0.55, type, measure), {
    ...type,
    anchor: 'end',
  });
}
