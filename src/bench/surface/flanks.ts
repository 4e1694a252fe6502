import { quantileOf } from '../../maths/index.ts';

/** What is seen across a line in a single picture, the medians along it; logarithms of light. */
export interface Flanks {
  /** How much lighter one flank is than the other, the mean of the three channels, from 0 up. */
  readonly flank: number;
  /** How much lighter the print on one side of the line is than on the other, from 0 up. */
  readonly step: number;
  /** By how much the flanks differ in colour, and by how much the print on both sides does. */
  readonly tint: number;
  readonly tintStep: number;
  /** 1 where one flank is as much lighter than the print as the other is darker, 0 where one is print. */
  readonly opposite: number;
  /** Share of the line whose flanks lie as most of them do. */
  readonly even: number;
}

/** A view in linear light, red, green and blue interleaved. */
export interface ColourPlane {
  readonly width: number;
  readonly height: number;
  readonly colours: Float32Array;
}

/** Pixels across: flanks one and two from the line, the print five to seven. */
const REACH = 7;
const ACROSS = 2 * REACH + 1;
const ALONG_PX = 2;
const LEAST_LIGHT = 0.004;

/** Profiles across a line every two pixels, and their medians: light runs as one number, tints as two. */
export function flanksOf(
  plane: ColourPlane,
  pixels: readonly (readonly [number, number])[],
): Flanks {
  const profiles = profilesOf(plane, pixels);
  const light = profiles.map(({ light }) => light);
  const tints = [profiles.map(({ redness }) => redness), profiles.map(({ blueness }) => blueness)];
  const flanks = light.map(flankOf);
  const flank = quantileOf(flanks, 0.5);
  const [one, other] = [1, -2].map((from) =>
    quantileOf(
      light.map((profile) => meanOf(profile, from) - printOf(profile)),
      0.5,
    ),
  ) as [number, number];
  const smaller = Math.min(Math.abs(one), Math.abs(other));
  const larger = Math.max(Math.abs(one), Math.abs(other), 1e-6);
  const sizes = (values: readonly number[]) => quantileOf(values.map(Math.abs), 0.5);
  return {
    flank: Math.abs(flank),
    step: sizes(light.map(stepOf)),
    tint: Math.hypot(...tints.map((tint) => quantileOf(tint.map(flankOf), 0.5))) / 2,
    tintStep: Math.max(...tints.map((tint) => sizes(tint.map(stepOf)))),
    opposite: (one * other < 0 ? smaller : -smaller) / larger,
    even: flanks.filter((value) => value * flank > 0.3 * flank * flank).length / flanks.length,
  };
}

interface Profile {
  readonly light: Float32Array;
  /** Red and blue against green. */
  readonly redness: Float32Array;
  readonly blueness: Float32Array;
}

function profilesOf(
  plane: ColourPlane,
  pixels: readonly (readonly [number, number])[],
): readonly Profile[] {
  return pixels.slice(1).flatMap(([x1, y1], k) => {
    const [x0, y0] = pixels[k] as readonly [number, number];
    const long = Math.max(Math.hypot(x1 - x0, y1 - y0), 1e-6);
    const way = [(x1 - x0) / long, (y1 - y0) / long] as const;
    return Array.from({ length: Math.ceil(long / ALONG_PX) }, (_, i) =>
      profileAt(plane, [x0 + i * ALONG_PX * way[0], y0 + i * ALONG_PX * way[1]], way),
    );
  });
}

function profileAt(
  { width, height, colours }: ColourPlane,
  [x, y]: readonly [number, number],
  [wayX, wayY]: readonly [number, number],
): Profile {
  const [light, redness, blueness] = [0, 1, 2].map(() => new Float32Array(ACROSS)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  for (let k = 0; k < ACROSS; k++) {
    const u = Math.max(0, Math.min(width - 1.001, x - (k - REACH) * wayY));
    const v = Math.max(0, Math.min(height - 1.001, y + (k - REACH) * wayX));
    const at = 3 * (Math.floor(v) * width + Math.floor(u));
    const [fx, fy] = [u % 1, v % 1];
    const log = (channel: 0 | 1 | 2): number => {
      const i = at + channel;
      const above = (1 - fx) * (colours[i] as number) + fx * (colours[i + 3] as number);
      const j = i + 3 * width;
      const below = (1 - fx) * (colours[j] as number) + fx * (colours[j + 3] as number);
      return Math.log((1 - fy) * above + fy * below + LEAST_LIGHT);
    };
    const [red, green, blue] = [log(0), log(1), log(2)];
    light[k] = (red + green + blue) / 3;
    redness[k] = red - green;
    blueness[k] = blue - green;
  }
  return { light, redness, blueness };
}

/** Mean of the pixels from one on to another across the line, 0 on it. */
function meanOf(profile: Float32Array, from: number, to = from + 1): number {
  let sum = 0;
  for (let u = from; u <= to; u++) sum += profile[u + REACH] as number;
  return sum / (to - from + 1);
}

const flankOf = (profile: Float32Array) => meanOf(profile, 1) - meanOf(profile, -2);
const stepOf = (profile: Float32Array) => meanOf(profile, 5, 7) - meanOf(profile, -7, -5);
const printOf = (profile: Float32Array) => (meanOf(profile, 5, 7) + meanOf(profile, -7, -5)) / 2;
