import { useRef } from 'react';
import type { CountingService, WireFall, WireHistory } from '../../contract/index.ts';
import { sayEdtf } from '../../evidence/index.ts';
import { useWidth } from '../app/media.ts';
import { BAR_HEIGHT, type Bar, stackOf } from './stack.ts';
import { TimeAxis } from './TimeAxis.tsx';

interface Props {
  readonly service: CountingService;
  readonly history: WireHistory;
  readonly falls: readonly WireFall[];
  readonly labels: readonly string[];
}

const LEFT = 34;
const RIGHT = 64;

/** Graded copies of one printing at one service, a bar a report, stacked by grade. */
export function StackFigure({ service, history, falls, labels }: Props) {
  const holder = useRef<HTMLElement>(null);
  const width = useWidth(holder, 520) - LEFT - RIGHT;
  const { grades, top } = service;
  const { scale, bars, most, thick } = stackOf(history, grades.length, width);
  const mine = falls.filter((one) => one.service === service.id && labels.includes(one.label));
  const estimated = history.share < 1;
  const told = bars.slice(-8).map(({ as_of, total }) => `${sayEdtf(as_of)}: ${Math.round(total)}`);
  return (
    <figure className="distribution stack" ref={holder}>
      <svg
        className="axis"
        width={width + LEFT + RIGHT}
        height={BAR_HEIGHT + 34}
        role="img"
        aria-label={`${service.title}: graded copies by grade at each report. ${told.join(', ')}.`}
      >
        <g transform={`translate(${LEFT} 10)`}>
          <TimeAxis scale={scale} height={BAR_HEIGHT} most={most} />
          {bars.map((bar) => (
            <Stacked
              key={bar.as_of}
              {...{ bar, service, thick }}
              fell={mine.some(({ to }) => to === bar.as_of)}
            />
          ))}
          {bars
            .at(-1)
            ?.blocks.filter(({ height, grade }) => height >= 11 || grade >= top)
            .map(({ y, height, grade }) => (
              <text
                key={grade}
                className="small"
                x={(bars.at(-1)?.x ?? 0) + thick / 2 + 5}
                y={y + height / 2 + 4}
              >
                {grades[grade]}
              </text>
            ))}
        </g>
      </svg>
      <figcaption>
        {service.title}: graded copies by grade at each report, the top grade
        {top < grades.length - 1 ? 's' : ''} in full ink
        {estimated ? '; the estimated share of a label that holds several, with its 95 %' : ''}
        {mine.length > 0 ? '. × a count fell, which grading alone cannot do' : ''}.
      </figcaption>
    </figure>
  );
}

interface StackedProps {
  readonly bar: Bar;
  readonly service: CountingService;
  readonly thick: number;
  readonly fell: boolean;
}

function Stacked({ bar, service: { title, grades, top }, thick, fell }: StackedProps) {
  const { x, blocks, as_of, doubt, y } = bar;
  return (
    <g>
      {blocks.map(({ grade, count, y: from, height }) => (
        <rect
          key={grade}
          className="ink"
          x={x - thick / 2}
          y={from}
          width={thick}
          height={Math.max(0.5, height - 0.6)}
          fillOpacity={grade >= top ? 1 : 0.1 + (0.45 * grade) / Math.max(1, top)}
          data-why={`${title}, as of ${sayEdtf(as_of)}: ${doubt ? 'about ' : ''}${Math.round(count)} graded ${grades[grade]}.`}
        />
      ))}
      {doubt ? (
        <path className="agrees" d={`M${x - 3} ${doubt[0]}h6m-3 0V${doubt[1]}m-3 0h6`} />
      ) : null}
      {fell ? <path className="slips" d={`M${x - 4} ${y - 14}l8 8m0 -8l-8 8`} /> : null}
    </g>
  );
}
