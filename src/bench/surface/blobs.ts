/** Connected cells of a mask, rows after one another, that touch at sides or corners; empties the mask. */
export function blobsOf(mask: Uint8Array, columns: number): readonly (readonly number[])[] {
  const rows = mask.length / columns;
  const blobs: number[][] = [];
  for (let first = 0; first < mask.length; first++) {
    if (mask[first] === 0) continue;
    const cells = [first];
    mask[first] = 0;
    for (let k = 0; k < cells.length; k++) {
      const cell = cells[k] as number;
      const column = cell % columns;
      const row = (cell - column) / columns;
      for (let y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++)
        for (let x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
          const next = y * columns + x;
          if (mask[next] === 0) continue;
          mask[next] = 0;
          cells.push(next);
        }
    }
    blobs.push(cells);
  }
  return blobs;
}
