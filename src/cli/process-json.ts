import type { PrintProcess } from '../bench/index.ts';

/** A print process as the commands print it. */
export function processJson({ process, screens, rosette, texture, range }: PrintProcess): object {
  return {
    process,
    screens: screens.map(({ lpi, angleDeg, strength, ink }) => ({
      lpi,
      angle_deg: angleDeg,
      strength,
      ink,
    })),
    rosette,
    texture,
    range_lpi: range,
  };
}
