/** The part of `heic-decode` that is used; the package brings no types. */
declare module 'heic-decode' {
  export interface Pixels {
    readonly width: number;
    readonly height: number;
    /** Red, green, blue and opacity, 8 bits each. */
    readonly data: Uint8ClampedArray;
  }
  interface HeicImage {
    readonly width: number;
    readonly height: number;
    decode(): Promise<Pixels>;
  }
  export type HeicImages = readonly HeicImage[] & { dispose(): void };
  const heicDecode: { all(input: { buffer: Uint8Array }): Promise<HeicImages> };
  export default heicDecode;
}
