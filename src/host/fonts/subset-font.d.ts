/** The part of `subset-font` that is used; the package brings no types. */
declare module 'subset-font' {
  interface SubsetOptions {
    readonly targetFormat: 'truetype' | 'woff2';
    /** A number pins an axis, a range narrows it. */
    readonly variationAxes: Readonly<
      Record<string, number | { readonly min: number; readonly max: number }>
    >;
    readonly keepFeatures: readonly string[];
    readonly preserveNameIds: readonly number[];
    readonly dropTables: readonly string[];
  }
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: SubsetOptions,
  ): Promise<Uint8Array>;
}
