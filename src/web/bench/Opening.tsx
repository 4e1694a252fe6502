import type { ReactNode } from 'react';
import type { Part } from './part.ts';

interface Props {
  readonly box: Part;
  readonly name?: string;
  readonly children: ReactNode;
}

/** An opening in a drawing: what lies in it is placed from its own upper left corner, and ends at its rim. */
export function Opening({ box: { x, y, width, height }, name, children }: Props) {
  return (
    <svg x={x} y={y} width={width} height={height} className={name} aria-hidden="true">
      {children}
    </svg>
  );
}
