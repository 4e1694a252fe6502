/** Most pixels that a picture may have. */
export const MOST_PIXELS = 200e6;

/** Pixels above which a picture is shrunk by a whole number while it is decoded. */
export const MOST_PIXELS_AT_FULL_SIZE = 50e6;

/** Most pixels of a HEIC picture, whose decoder holds all of it several times over. */
export const MOST_PIXELS_OF_HEIC = 64e6;

/** Bytes of the largest file, 200 million pixels of four 16-bit samples without compression. */
export const MOST_BYTES = 1.7e9;

/** Bytes of the largest HEIC file, which is read as a whole. */
export const MOST_BYTES_OF_HEIC = 100e6;
