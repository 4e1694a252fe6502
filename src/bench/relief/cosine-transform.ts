import FFT from 'fft.js';

/** The cosine transform of a plane, forth and back, in place; both sides powers of two. */
export interface CosineTransform {
  forth(plane: Float64Array): void;
  back(plane: Float64Array): void;
}

/**
 * The two-dimensional DCT-II, X[k] = Σ x[n] cos(πk(2n + 1)/2N) along both axes, and its inverse,
 * by a complex transform of the same length (`makhoul:1980`) that carries two lines at once.
 */
export function cosineTransform(width: number, height: number): CosineTransform {
  const rows = linesOf(width);
  const columns = linesOf(height);
  return {
    forth(plane) {
      for (let y = 0; y < height; y += 2) rows.forth(plane, y * width, width, 1);
      for (let x = 0; x < width; x += 2) columns.forth(plane, x, 1, width);
    },
    back(plane) {
      for (let x = 0; x < width; x += 2) columns.back(plane, x, 1, width);
      for (let y = 0; y < height; y += 2) rows.back(plane, y * width, width, 1);
    },
  };
}

/** Transforms two lines of a plane: their first entry, the way to the other line, and to the next entry. */
type TwoLines = (plane: Float64Array, first: number, other: number, step: number) => void;

function linesOf(n: number): { readonly forth: TwoLines; readonly back: TwoLines } {
  const fft = new FFT(n);
  const from = new Float64Array(2 * n);
  const to = new Float64Array(2 * n);
  const cos = Float64Array.from({ length: n }, (_, k) => Math.cos((Math.PI * k) / (2 * n)));
  const sin = Float64Array.from({ length: n }, (_, k) => Math.sin((Math.PI * k) / (2 * n)));
  // Even entries run forth, odd ones back.
  const place = Int32Array.from({ length: n }, (_, i) => (i % 2 === 0 ? i / 2 : n - (i + 1) / 2));
  return {
    forth(plane, first, other, step) {
      for (let i = 0, at = first; i < n; i++, at += step) {
        const k = 2 * (place[i] as number);
        from[k] = plane[at] as number;
        from[k + 1] = plane[at + other] as number;
      }
      fft.transform(to, from);
      for (let k = 0; k < n; k++) {
        const [re, im] = [to[2 * k] as number, to[2 * k + 1] as number];
        from[2 * k] = re * (cos[k] as number) + im * (sin[k] as number);
        from[2 * k + 1] = im * (cos[k] as number) - re * (sin[k] as number);
      }
      plane[first] = from[0] as number;
      plane[first + other] = from[1] as number;
      for (let k = 1, at = first + step; k < n; k++, at += step) {
        const back = 2 * (n - k);
        plane[at] = ((from[2 * k] as number) - (from[back + 1] as number)) / 2;
        plane[at + other] = ((from[2 * k + 1] as number) + (from[back] as number)) / 2;
      }
    },
    back(plane, first, other, step) {
      for (let k = 0, at = first; k < n; k++, at += step) {
        const mirrored = first + (n - k) * step;
        const a = plane[at] as number;
        const b = plane[at + other] as number;
        const re = k === 0 ? a : a + (plane[mirrored + other] as number);
        const im = k === 0 ? b : b - (plane[mirrored] as number);
        from[2 * k] = re * (cos[k] as number) - im * (sin[k] as number);
        from[2 * k + 1] = im * (cos[k] as number) + re * (sin[k] as number);
      }
      fft.inverseTransform(to, from);
      for (let i = 0, at = first; i < n; i++, at += step) {
        const k = 2 * (place[i] as number);
        plane[at] = to[k] as number;
        plane[at + other] = to[k + 1] as number;
      }
    },
  };
}
