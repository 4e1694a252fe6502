import { type KeyboardEvent, useState } from 'react';
import type { Placed } from './picture.ts';
import { SaleMarkDrawn } from './SaleMarkDrawn.tsx';
import { stepTo } from './step.ts';

interface Props {
  readonly marks: readonly Placed[];
  readonly services: readonly string[];
  /** A sale in words. */
  readonly said: (sale: Placed['sale']) => string;
}

/** Every sale as a mark. One of them is the stop of the Tab key; arrow keys lead on, day by day. */
export function SaleMarks({ marks, services, said }: Props) {
  const inOrder = [...marks].sort((a, b) => a.x - b.x || a.sale.row - b.sale.row);
  const [row, setRow] = useState<number>();
  const found = inOrder.findIndex(({ sale }) => sale.row === row);
  const stop = found < 0 ? inOrder.length - 1 : found;
  const keys = (event: KeyboardEvent<SVGGElement>) => {
    const to = stepTo(event.key, stop, inOrder.length);
    if (to === null) return;
    event.preventDefault();
    const all = event.currentTarget.parentElement?.querySelectorAll<SVGGElement>('.sale');
    all?.[to]?.focus();
  };
  return (
    <g>
      {inOrder.map((mark, at) => (
        <SaleMarkDrawn
          key={mark.sale.row}
          mark={mark}
          shape={services.indexOf(mark.sale.service ?? '')}
          words={said(mark.sale)}
          stop={at === stop}
          reach={() => setRow(mark.sale.row)}
          keys={keys}
        />
      ))}
    </g>
  );
}
