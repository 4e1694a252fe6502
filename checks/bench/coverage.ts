type Point = readonly [x: number, y: number];

/**
 * How much of each pixel lies in a polygon, 0 to 1, exactly: each edge leaves in every row it
 * crosses the area to its right, and a row's sum from the left is the coverage. Pixel centres are
 * whole numbers; the polygon may be concave but must not cross itself.
 */
export function coverageOf(polygon: readonly Point[], width: number, height: number): Float64Array {
  const sums = new Float64Array((width + 1) * height);
  polygon.forEach((from, i) => {
    addEdge(sums, width, height, from, polygon[(i + 1) % polygon.length] as Point);
  });
  const covered = new Float64Array(width * height);
  for (let y = 0; y < height; y++) {
    let sum = 0;
    for (let x = 0; x < width; x++) {
      sum += sums[y * (width + 1) + x] as number;
      covered[y * width + x] = Math.min(1, Math.abs(sum));
    }
  }
  return covered;
}

function addEdge(sums: Float64Array, width: number, height: number, from: Point, to: Point): void {
  if (from[1] === to[1]) return;
  const sign = from[1] < to[1] ? 1 : -1;
  // The rim of the first pixel is at -0.5: from here on it is at 0.
  const [[x0, y0], [x1, y1]] = (sign > 0 ? [from, to] : [to, from]).map(
    ([x, y]) => [x + 0.5, y + 0.5] as const,
  ) as [Point, Point];
  const slope = (x1 - x0) / (y1 - y0);
  for (let row = Math.max(0, Math.floor(y0)); row < Math.min(height, Math.ceil(y1)); row++) {
    const [above, below] = [Math.max(y0, row), Math.min(y1, row + 1)];
    const a = x0 + (above - y0) * slope;
    const b = x0 + (below - y0) * slope;
    addRow(sums, row * (width + 1), width, Math.min(a, b), Math.max(a, b), sign * (below - above));
  }
}

/** One row's part of an edge that runs from `left` to `right` over the height `tall`. */
function addRow(
  sums: Float64Array,
  start: number,
  width: number,
  left: number,
  right: number,
  tall: number,
): void {
  let before = 0;
  const last = Math.floor(right);
  for (let x = Math.floor(left); x <= last + 1; x++) {
    const area = tall * areaLeftOf(left, right, x, x + 1);
    const at = Math.min(Math.max(x, 0), width);
    sums[start + at] = (sums[start + at] as number) + area - before;
    before = area;
  }
}

/**
 * Mean over an edge from `left` to `right` of the share of the pixel from `x` to `next` that lies to
 * the edge's right.
 */
function areaLeftOf(left: number, right: number, x: number, next: number): number {
  const filled = (edge: number) => Math.min(1, Math.max(0, next - edge));
  if (right - left < 1e-12) return filled(left);
  // The share falls from 1 to 0 as the edge crosses the pixel: its integral is piecewise quadratic.
  const integral = (edge: number) => {
    if (edge <= x) return edge - x;
    if (edge >= next) return 0.5;
    return (edge - x) * (1 - (edge - x) / 2);
  };
  return (integral(right) - integral(left)) / (right - left);
}
