const TIFF_HEADER = 8;
const ENTRY = 12;
const SHORT = 3;
const LONG = 4;
const UNDEFINED = 7;

/**
 * The samples of a picture as an uncompressed TIFF (TIFF 6.0) that bears a colour profile, so that
 * what reads files can convert it. Samples are 8-bit red, green, blue and opacity.
 */
export function tiffOf(
  width: number,
  height: number,
  samples: Uint8Array,
  profile: Uint8Array,
): Buffer {
  const tags = 11;
  const bits = TIFF_HEADER + 2 + tags * ENTRY + 4;
  const colour = bits + 8;
  const strip = colour + profile.length + (profile.length % 2);
  const file = Buffer.alloc(strip + samples.length);
  file.write('II*\0', 'latin1');
  file.writeUInt32LE(TIFF_HEADER, 4);
  file.writeUInt16LE(tags, TIFF_HEADER);
  const entries: readonly (readonly [tag: number, type: number, count: number, value: number])[] = [
    [256, LONG, 1, width],
    [257, LONG, 1, height],
    [258, SHORT, 4, bits],
    [259, SHORT, 1, 1],
    [262, SHORT, 1, 2],
    [273, LONG, 1, strip],
    [277, SHORT, 1, 4],
    [278, LONG, 1, height],
    [279, LONG, 1, samples.length],
    [338, SHORT, 1, 2],
    [34_675, UNDEFINED, profile.length, colour],
  ];
  for (const [i, [tag, type, count, value]] of entries.entries()) {
    const at = TIFF_HEADER + 2 + i * ENTRY;
    file.writeUInt16LE(tag, at);
    file.writeUInt16LE(type, at + 2);
    file.writeUInt32LE(count, at + 4);
    file.writeUInt32LE(value, at + 8);
  }
  for (let i = 0; i < 4; i++) file.writeUInt16LE(8, bits + 2 * i);
  file.set(profile, colour);
  file.set(samples, strip);
  return file;
}
