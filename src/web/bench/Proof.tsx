import type { BenchCopy } from '../../contract/index.ts';
import { sayList } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { count, EXPLAIN_GAIN, sayBits, sayP } from '../words/index.ts';
import { sayLook } from './tell.ts';

const TALL = 56;

/** What a service might say, as bars over its grades, and what would narrow it down. */
export function Proof({ grade, front, back }: Pick<BenchCopy, 'grade' | 'front' | 'back'>) {
  if (!grade) return null;
  const { grades, service, copies, outcomes } = grade;
  const measured = [front, back].some((face) => face?.frame || face?.looks.length);
  const from = [
    ...(copies > 0 ? [count(copies, 'graded copy', 'graded copies')] : []),
    ...(outcomes > 0 ? [count(outcomes, 'outcome of your own', 'outcomes of your own')] : []),
    ...(measured ? ['these measurements'] : []),
  ];
  return (
    <section>
      <h3>The proof: what {service || 'a service'} might say</h3>
      <Bars grades={grades} service={service} />
      <p className="detail said-of">
        {measured ? '' : 'Nothing of this copy could be measured. '}
        {from.length > 0 ? `A guess from ${sayList(from)}; no` : 'No'} service is bound by it.
      </p>
      <NextLook looks={grade.looks} />
    </section>
  );
}

type Grade = NonNullable<BenchCopy['grade']>;

function Bars({ grades, service }: Pick<Grade, 'grades' | 'service'>) {
  const most = Math.max(...grades.map(({ p }) => p), 0.01);
  const wide = 320 / Math.max(1, grades.length);
  const told = grades.filter(({ p }) => p >= 0.005).map(({ grade, p }) => `${grade}: ${sayP(p)}`);
  return (
    <svg
      className="proof"
      viewBox="0 0 320 96"
      width="100%"
      role="img"
      aria-label={told.join(', ')}
    >
      {grades.map(({ grade, p }, at) => {
        const height = Math.max(0.5, (p / most) * TALL);
        const middle = wide * (at + 0.5);
        return (
          <g
            key={grade}
            data-why={`Probability that ${service || 'a service'} would say ${grade}: ${sayP(p)}.`}
          >
            <rect x={middle - wide * 0.3} y={76 - height} width={wide * 0.6} height={height} />
            {p >= 0.005 ? (
              <text className="p" x={middle} y={71 - height}>
                {wide < 24 ? p.toFixed(2).slice(1) : p.toFixed(2)}
              </text>
            ) : null}
            <text x={middle} y={91}>
              {grade}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

function NextLook({ looks }: Pick<Grade, 'looks'>) {
  const worth = [...looks].filter(({ bits }) => bits > 0.005).sort((a, b) => b.bits - a.bits);
  if (worth.length === 0) return null;
  return (
    <div className="on-screen">
      <h3>
        The next look <span>would tell</span>
      </h3>
      <ul className="rows">
        {worth.map(({ look, bits }) => (
          <li key={look}>
            <span>{sayLook(look)}</span>
            <Num why={EXPLAIN_GAIN}>{sayBits(bits)}</Num>
          </li>
        ))}
      </ul>
    </div>
  );
}
