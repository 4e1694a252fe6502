/**
 * A picture as stored, turned upright: rows from the top, interleaved red, green, blue in the sRGB
 * curve. Treat the samples as read-only: pictures are passed on, never changed.
 */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** `width * height * 3` samples, 0 to 255 in a Uint8Array and 0 to 65535 in a Uint16Array. */
  readonly samples: Uint8Array | Uint16Array;
  /** Dots an inch that the file itself states; null where it states none. */
  readonly dpi: number | null;
}

/** One channel of a picture, rows from the top. What a value means is said where it is made. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/**
 * A picture from samples made elsewhere.
 * @throws RangeError where the samples do not fill the size exactly.
 */
export function pictureOf(
  width: number,
  height: number,
  samples: Uint8Array | Uint16Array,
  dpi: number | null = null,
): Picture {
  if (!Number.isInteger(width) || !Number.isInteger(height) || width < 1 || height < 1)
    throw new RangeError(`A picture has whole sides of at least 1, found ${width} × ${height}.`);
  if (samples.length !== width * height * 3)
    throw new RangeError(
      `A picture of ${width} × ${height} has ${width * height * 3} samples, found ${samples.length}.`,
    );
  return { width, height, samples, dpi };
}
