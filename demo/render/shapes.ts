import type { Contour, Point } from './canvas.ts';

/** A rectangle, clockwise as seen. */
export function rectangle(x0: number, y0: number, x1: number, y1: number): Contour {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** An ellipse, turned by an angle in radians. */
export function ellipse(
  [x, y]: Point,
  rx: number,
  ry = rx,
  angle = 0,
  sides = Math.max(24, Math.ceil(16 * Math.sqrt(Math.max(rx, ry)))),
): Contour {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return Array.from({ length: sides }, (_, i): Point => {
    const t = (2 * Math.PI * i) / sides;
    const [u, v] = [rx * Math.cos(t), ry * Math.sin(t)];
    return [x + c * u - s * v, y + s * u + c * v];
  });
}

/** A straight stroke of that width, with flat ends. */
export function stroke([ax, ay]: Point, [bx, by]: Point, width: number): Contour {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  const nx = ((by - ay) / length) * (width / 2);
  const ny = (-(bx - ax) / length) * (width / 2);
  return [
    [ax + nx, ay + ny],
    [bx + nx, by + ny],
    [bx - nx, by - ny],
    [ax - nx, ay - ny],
  ];
}

/** The same line run the other way round, as a hole. */
export function hole(contour: Contour): Contour {
  return [...contour].reverse();
}

/** A leaf from its stalk to its tip. */
export function leaf([x, y]: Point, length: number, width: number, angle: number): Contour {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const at = (u: number, v: number): Point => [x + c * u - s * v, y + s * u + c * v];
  const side = (sign: number, i: number) => {
    const t = i / 9;
    return at(length * t, sign * width * Math.sin(Math.PI * t) * (1.2 - 0.5 * t) * 0.5);
  };
  const there = Array.from({ length: 9 }, (_, i) => side(1, i));
  const back = Array.from({ length: 9 }, (_, i) => side(-1, 9 - i));
  return [...there, ...back];
}

/** A rectangle with round tips. */
export function rounded(x0: number, y0: number, x1: number, y1: number, r: number): Contour {
  const arc = (x: number, y: number, from: number) =>
    Array.from({ length: 13 }, (_, i): Point => {
      const t = ((from + i * 7.5) * Math.PI) / 180;
      return [x + r * Math.cos(t), y + r * Math.sin(t)];
    });
  return [
    ...arc(x0 + r, y0 + r, 180),
    ...arc(x1 - r, y0 + r, 270),
    ...arc(x1 - r, y1 - r, 0),
    ...arc(x0 + r, y1 - r, 90),
  ];
}

/** Signed distance to a rectangle with round tips about (0, 0) from the origin's corner: below 0 inside. */
export function roundedDistance(x: number, y: number, w: number, h: number, r: number): number {
  const qx = Math.abs(x - w / 2) - w / 2 + r;
  const qy = Math.abs(y - h / 2) - h / 2 + r;
  const outside = qx > 0 && qy > 0 ? Math.sqrt(qx * qx + qy * qy) : Math.max(qx, qy);
  return outside - r;
}
