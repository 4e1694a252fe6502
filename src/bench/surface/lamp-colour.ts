import { LUMINANCE } from '../light/srgb.ts';
import type { Plane } from '../picture.ts';

const APART = 3;
/** Weight of the usual luminance beside what the picture says, as a share of the latter's scatter. */
const FIRM = 0.01;

/**
 * A picture under soft light in grey, its colours weighed as the lamp of another picture weighs
 * them: lamps differ in colour, so that two inks that are equally light under one are not under the
 * other. Weights by least squares on the differences of places three pixels apart, with a
 * little weight on the usual luminance, for prints without colours.
 *
 * @param colours red, green and blue of the soft picture, interleaved, in linear light
 */
export function greyAsLit(colours: Float32Array, raking: Plane): Plane {
  const { width, height } = raking;
  const [red, green, blue] = weightsOf(colours, raking);
  const values = new Float32Array(width * height);
  for (let i = 0, j = 0; i < values.length; i++, j += 3)
    values[i] =
      red * (colours[j] as number) +
      green * (colours[j + 1] as number) +
      blue * (colours[j + 2] as number);
  return { width, height, values };
}

type Three = [number, number, number];

function weightsOf(colours: Float32Array, { width, height, values }: Plane): Three {
  let [rr, rg, rb, gg, gb, bb] = [0, 0, 0, 0, 0, 0];
  const v: Three = [0, 0, 0];
  for (let y = 10; y < height - 10; y += 2)
    for (let x = 10, i = y * width + 10; x < width - 10; x += 3, i += 3) {
      const j = 3 * i;
      const k = j + 3 * APART;
      const r = (colours[k] as number) - (colours[j] as number);
      const g = (colours[k + 1] as number) - (colours[j + 1] as number);
      const b = (colours[k + 2] as number) - (colours[j + 2] as number);
      const step = (values[i + APART] as number) - (values[i] as number);
      rr += r * r;
      rg += r * g;
      rb += r * b;
      gg += g * g;
      gb += g * b;
      bb += b * b;
      v[0] += r * step;
      v[1] += g * step;
      v[2] += b * step;
    }
  const [lr, lg, lb] = LUMINANCE;
  // How bright the lamp is as a whole: the one factor on the usual luminance that fits best.
  const level =
    (v[0] * lr + v[1] * lg + v[2] * lb) /
    (lr * (rr * lr + rg * lg + rb * lb) +
      lg * (rg * lr + gg * lg + gb * lb) +
      lb * (rb * lr + gb * lg + bb * lb) +
      1e-12);
  const firm = FIRM * (rr + gg + bb) + 1e-9;
  return solvedThree(
    [rr + firm, rg, rb, gg + firm, gb, bb + firm],
    [v[0] + firm * level * lr, v[1] + firm * level * lg, v[2] + firm * level * lb],
  );
}

type Symmetric = readonly [...Three, ...Three];

/** Solves three equations with a symmetric matrix, given by its upper half in rows, by Cramer's rule. */
function solvedThree([a, b, c, d, e, f]: Symmetric, [x, y, z]: Three): Three {
  const [aa, ab, ac] = [d * f - e * e, c * e - b * f, b * e - c * d];
  const [bb, bc, cc] = [a * f - c * c, b * c - a * e, a * d - b * b];
  const whole = a * aa + b * ab + c * ac;
  return [
    (aa * x + ab * y + ac * z) / whole,
    (ab * x + bb * y + bc * z) / whole,
    (ac * x + bc * y + cc * z) / whole,
  ];
}
