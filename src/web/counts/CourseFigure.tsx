import { useRef } from 'react';
import type { CountingService, WireFall, WireServiceCount } from '../../contract/index.ts';
import { sayEdtf } from '../../evidence/index.ts';
import { useWidth } from '../app/media.ts';
import { bandOf, courseOf, topOf } from './course.ts';
import { TimeAxis } from './TimeAxis.tsx';

interface Props {
  readonly counts: readonly WireServiceCount[];
  readonly services: readonly CountingService[];
  readonly falls: readonly WireFall[];
  /** First and last day of all reports. */
  readonly days: readonly [number, number];
  readonly label: string;
}

const HEIGHT = 84;
const LEFT = 34;

/** Graded copies of one printing at each report, a line a service; falls are crossed. */
export function CourseFigure({ counts, services, falls, days, label }: Props) {
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder, 300) - LEFT - 12;
  const [from, to] = days;
  const scale = { from: from - 15, to: to + 15, width };
  const top = topOf(Math.max(1, ...counts.map(highest)));
  return (
    <div ref={holder}>
      <svg
        className="axis course"
        width={width + LEFT + 12}
        height={HEIGHT + 30}
        role="img"
        aria-label={label}
      >
        <g transform={`translate(${LEFT} 8)`}>
          <TimeAxis scale={scale} height={HEIGHT} most={top} />
          {counts.map((one) => (
            <Line
              key={one.service}
              one={one}
              at={services.findIndex(({ id }) => id === one.service)}
              {...{ services, falls, scale, top }}
            />
          ))}
        </g>
      </svg>
    </div>
  );
}

/** The highest that is drawn of a service: its counts, under a lump the upper end of their share. */
function highest({ course, total, total95, lumped_with: others }: WireServiceCount): number {
  const most = Math.max(0, ...course.map((n) => n ?? 0));
  return others.length > 0 && total > 0 ? (most * total95[1]) / total : most;
}

interface LineProps {
  readonly one: WireServiceCount;
  readonly at: number;
  readonly services: readonly CountingService[];
  readonly falls: readonly WireFall[];
  readonly scale: { readonly from: number; readonly to: number; readonly width: number };
  readonly top: number;
}

function Line({ one, at, services, falls, scale, top }: LineProps) {
  const reports = services[at]?.reports ?? [];
  const days = reports.map(({ day }) => day);
  const course = courseOf(days, one.course, scale, top, HEIGHT);
  const { total, total95, lumped_with: others } = one;
  const fell = new Set(
    falls.flatMap(({ service, label, to }) =>
      service === one.service && one.labels.includes(label)
        ? [reports.find(({ as_of }) => as_of === to)?.day]
        : [],
    ),
  );
  const told = (count: number, day: number) =>
    `${services[at]?.title}, as of ${sayEdtf(reports.find((report) => report.day === day)?.as_of ?? '')}: ${others.length > 0 ? 'about ' : ''}${Math.round(count)} graded.`;
  return (
    <g className={`service s${at % 3}`}>
      {others.length > 0 && total > 0 ? (
        <path
          className="doubt"
          d={bandOf(course, total95[0] / total, total95[1] / total, top, HEIGHT)}
        />
      ) : null}
      <path className="line" d={course.line} />
      {course.dots.map(({ x, y, count, day }) => (
        <g key={day}>
          <circle className="dot" cx={x} cy={y} r="2.2" />
          <circle className="reach" cx={x} cy={y} r="9" data-why={told(count, day)} />
          {fell.has(day) ? (
            <path className="slips" d={`M${x - 4} ${y - 12}l8 8m0 -8l-8 8`} />
          ) : null}
        </g>
      ))}
    </g>
  );
}
