/** Widths of the drawn columns, in pixels; `stacked` where the close-up stands under the name. */
export interface Widths {
  readonly stacked: boolean;
  readonly long: number;
  readonly close: number;
}

/** Splits what names and days leave of `inner` pixels between the two axes. */
export function widthsOf(inner: number): Widths {
  if (inner < 600) {
    const width = Math.max(120, inner - 8);
    return { stacked: true, long: width, close: width };
  }
  const name = Math.min(264, Math.round(inner * 0.27));
  const day = 148;
  const rest = Math.max(200, inner - name - day - 20);
  const close = Math.max(150, Math.round(rest * 0.42));
  return { stacked: false, long: rest - close, close };
}
