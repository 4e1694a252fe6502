import { centreOf, type Figure } from './figure.ts';
import { KEPT, STRIPS, type Strips } from './strips.ts';

/** An edge that runs along a side: pixels outward of the guess at its middle, and its slope. */
export interface Track {
  readonly off: number;
  /** Pixels outward gained from one end of the side to the other. */
  readonly slope: number;
  /** Share of the strips that hold it. */
  readonly share: number;
  /** Mean steepness where it is held. */
  readonly steep: number;
}

const BIN = 0.5;
const MOST_TRACKS = 6;
const LEAST_SHARE = 0.22;

/** Bows of a lens that are tried before it is fitted. */
const BOWS = [0, -0.012, 0.012, -0.03, 0.03] as const;

/** A bow must win by so much of a whole side before it is taken instead of none. */
const BOW_GAIN = 0.12;

/** The edges that run along each side and the first guess of the lens's bow that holds most of them. */
export function tracksOf(
  strips: Strips,
  figure: Figure,
  reach: number,
  slope: number,
  bowed: boolean,
): { readonly tracks: readonly (readonly Track[])[]; readonly k1: number } {
  let best = { tracks: [] as readonly (readonly Track[])[], k1: 0, held: -1 };
  for (const bow of bowed ? BOWS : [0]) {
    // The four sides cannot be held more than whole.
    if (best.held >= 4 - BOW_GAIN) break;
    const tracks = [0, 1, 2, 3].map((side) => sideTracks(strips, figure, side, reach, slope, bow));
    const held =
      tracks.reduce((sum, of) => sum + Math.max(0, ...of.map(({ share }) => share)), 0) -
      (bow === 0 ? 0 : BOW_GAIN);
    if (held > best.held) best = { tracks, k1: bow, held };
  }
  return { tracks: best.tracks, k1: figure.lens.k1 + best.k1 };
}

function sideTracks(
  strips: Strips,
  figure: Figure,
  side: number,
  reach: number,
  slope: number,
  bow: number,
): readonly Track[] {
  const bins = 2 * Math.ceil(reach / BIN) + 1;
  const middle = (bins - 1) / 2;
  const best: Track[] = Array.from({ length: bins }, () => nothing);
  const bent = bendsOf(strips, figure, side, bow);
  const held = new Float32Array(bins);
  const steep = new Float32Array(bins);
  const last = new Int32Array(bins);
  for (let gain = -slope; gain <= slope; gain += 1) {
    held.fill(0);
    steep.fill(0);
    last.fill(-1);
    for (let s = 0; s < STRIPS; s++) {
      const lean = gain * ((s + 0.5) / STRIPS - 0.5) + (bent[s] as number);
      const at = side * STRIPS + s;
      for (let k = at * KEPT; k < (at + 1) * KEPT; k++) {
        const off = strips.off[k] as number;
        if (Number.isNaN(off)) break;
        const bin = (Math.round((off - lean) / BIN) | 0) + middle;
        const to = Math.min(bins - 1, bin + 2);
        for (let b = Math.max(0, bin - 2); b <= to; b++) {
          if (last[b] === s) continue;
          last[b] = s;
          held[b] = (held[b] as number) + 1;
          steep[b] = (steep[b] as number) + (strips.steep[k] as number);
        }
      }
    }
    for (let b = 0; b < bins; b++)
      if ((held[b] as number) > best[b]!.share * STRIPS)
        best[b] = {
          off: (b - middle) * BIN,
          slope: gain,
          share: (held[b] as number) / STRIPS,
          steep: (steep[b] as number) / (held[b] as number),
        };
  }
  return peaks(best);
}

const nothing: Track = { off: 0, slope: 0, share: 0, steep: 0 };

function peaks(best: readonly Track[]): readonly Track[] {
  const worth = (track: Track | undefined) => (track ? track.share : 0);
  return best
    .filter((track, b) => {
      if (track.share < LEAST_SHARE) return false;
      for (let d = -4; d <= 4; d++) {
        const other = worth(best[b + d]);
        if (other > track.share || (other === track.share && d < 0)) return false;
      }
      return true;
    })
    .sort((a, b) => b.share - a.share)
    .slice(0, MOST_TRACKS);
}

/** Pixels outward by which a further bow of the lens moves an edge at each strip of a side. */
function bendsOf(strips: Strips, { lens }: Figure, side: number, bow: number): Float64Array {
  const { cx, cy, unit } = centreOf(lens);
  return Float64Array.from({ length: STRIPS }, (_, s) => {
    const at = side * STRIPS + s;
    const u = (strips.x[at] as number) - cx;
    const v = (strips.y[at] as number) - cy;
    const square = (u * u + v * v) / (unit * unit);
    return -bow * square * (u * (strips.nx[at] as number) + v * (strips.ny[at] as number));
  });
}
