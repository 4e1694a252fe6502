// biome-ignore-all lint/a11y/useSemanticElements: only rows in view exist, which no table can tell
import type { KeyboardEvent, MouseEvent, RefObject } from 'react';
import { useBook } from '../app/context.ts';
import { Lane, type LaneLook } from './Lane.tsx';
import { useRows } from './useRows.ts';

interface Props {
  readonly ids: readonly string[];
  readonly look: LaneLook;
  readonly scroller: RefObject<HTMLElement | null>;
  readonly active: number;
  readonly selected: string | undefined;
  readonly focusIn: (at: number) => void;
  readonly open: (id: string) => void;
  readonly keys: (event: KeyboardEvent) => void;
}

/** The lanes that can be seen, and the one the keys are on; the others are only their height. */
export function Lanes({ ids, look, scroller, active, selected, focusIn, open, keys }: Props) {
  const { dated, names, dating, held: onDesk } = useBook();
  const rows = useRows({ scroller, row: look.height, count: ids.length });
  const shown = ids.slice(rows.from, rows.to).map((id, k) => [id, rows.from + k] as const);
  const held = ids[active];
  if (held !== undefined && (active < rows.from || active >= rows.to)) shown.push([held, active]);
  const press = (event: MouseEvent) => {
    const lane = (event.target as Element).closest<HTMLElement>('[data-printing]');
    if (!lane || (event.target as Element).closest('[data-why]')) return;
    focusIn(ids.indexOf(lane.dataset.printing ?? ''));
    open(lane.dataset.printing ?? '');
  };
  return (
    <div
      className={look.stacked ? 'lanes stacked' : look.height < 40 ? 'lanes many' : 'lanes'}
      id="lanes"
      role="grid"
      aria-label="Printings in order"
      aria-rowcount={ids.length + 1}
      aria-activedescendant={held === undefined ? undefined : `lane-${held}`}
      tabIndex={0}
      onKeyDown={keys}
      onClick={press}
      style={{ height: ids.length * look.height }}
    >
      {shown.map(([id, at]) => (
        <Lane
          key={id}
          id={id}
          at={at}
          name={names.get(id) ?? { title: id, detail: '' }}
          dated={dated.get(id)}
          look={look}
          active={at === active}
          selected={id === selected}
          error={dating?.monte_carlo_error ?? 0}
          first={dating?.effort === 'first'}
          copies={onDesk.get(id)?.copies ?? 0}
          perhaps={onDesk.get(id)?.perhaps ?? 0}
        />
      ))}
    </div>
  );
}
