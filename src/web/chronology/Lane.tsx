// biome-ignore-all lint/a11y/useSemanticElements: only rows in view exist, which no table can tell
// biome-ignore-all lint/a11y/useFocusableInteractive: the grid holds the focus and points at its row
import { memo } from 'react';
import type { Name } from '../../catalogue/index.ts';
import type { Scale } from '../draw/index.ts';
import { HeldMark, Num } from '../marks/index.ts';
import { type DatedPrinting, drawnOf } from '../view/index.ts';
import { explainBest, explainWindow, sayDated } from '../words/index.ts';
import { CloseUp } from './CloseUp.tsx';
import { LongAxis } from './LongAxis.tsx';
import { tellLane } from './tell.ts';

export interface LaneLook {
  readonly height: number;
  readonly stacked: boolean;
  readonly scale: Scale;
  readonly lines: { readonly major: string; readonly minor: string };
  readonly reach: number;
  readonly close: number;
}

interface Props {
  readonly id: string;
  readonly at: number;
  readonly name: Pick<Name, 'title' | 'detail'>;
  readonly dated: DatedPrinting | undefined;
  readonly look: LaneLook;
  readonly active: boolean;
  readonly selected: boolean;
  readonly error: number;
  readonly first: boolean;
  /** Copies that the collector holds, and those that may be of this printing. */
  readonly copies: number;
  readonly perhaps: number;
}

/** One printing: its name, the years, the days, and what is held true. */
export const Lane = memo(function Lane(props: Props) {
  const { id, at, name, dated, look, active, selected, copies, perhaps } = props;
  const drawn = drawnOf(dated);
  const said = sayDated(dated);
  return (
    <div
      role="row"
      id={`lane-${id}`}
      data-printing={id}
      aria-rowindex={at + 2}
      aria-selected={selected}
      className={active ? 'lane active' : 'lane'}
      style={{ top: at * look.height, height: look.height }}
    >
      <div role="rowheader" className="lane-name">
        {copies + perhaps > 0 ? <HeldMark copies={copies} perhaps={perhaps} /> : null}
        <span className="title">{name.title}</span>
        <span className="detail">{name.detail}</span>
      </div>
      <div role="gridcell" className="lane-drawn">
        <span className="unseen">{tellLane(dated)}</span>
        {look.stacked ? null : (
          <LongAxis drawn={drawn} scale={look.scale} height={look.height} lines={look.lines} />
        )}
        <CloseUp
          drawn={drawn}
          reach={look.reach}
          width={look.close}
          height={look.stacked ? 40 : look.height}
        />
      </div>
      <div role="gridcell" className="lane-day">
        <span className="title">{said.main}</span>
        <Explained {...props} sub={said.sub} />
      </div>
    </div>
  );
});

function Explained({ dated, error, first, sub }: Props & { readonly sub: string }) {
  if (!dated || dated.state === 'open' || dated.state === 'bounded') {
    return <span className="detail">{sub}</span>;
  }
  const why =
    dated.state === 'day'
      ? explainBest(dated, { monte_carlo_error: error, effort: first ? 'first' : 'refined' })
      : explainWindow(dated);
  return (
    <span className="detail">
      <Num why={why} quiet>
        {sub}
      </Num>
    </span>
  );
}
