import type { BenchComparison, BenchFace } from '../../contract/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { capital } from '../words/index.ts';
import { BesideMeasured } from './BesideMeasured.tsx';

interface Props {
  readonly comparison: BenchComparison | undefined;
  readonly error: Error | null;
  /** What was measured on the copy's own picture, and what both pictures are called. */
  readonly face: BenchFace;
  readonly names: readonly [own: string, other: string];
}

/** What differs between two pictures, and which of two explanations it speaks for. */
export function Difference({ comparison, error, face, names }: Props) {
  if (error) return <p className="slip-note">{error.message}</p>;
  if (!comparison) return <p className="pending">They are being compared …</p>;
  const { words, findings, cautions, other } = comparison;
  return (
    <section className="dents">
      <p className="why">{words}</p>
      {other ? <BesideMeasured now={face} other={other} names={names} /> : null}
      {findings.length > 0 ? (
        <>
          <h3>
            What differs <span>powers of ten for the first</span>
          </h3>
          <ul className="rows">
            {findings.map(({ what, where, difference, sd, log10Lr }) => (
              <li key={what}>
                <span>
                  {capital(what)}{' '}
                  <span className="detail">
                    {difference.toFixed(2)} ± {sayDoubt(sd, 2)}
                    {where
                      ? `, most at ${where[0].toFixed(1)} across and ${where[1].toFixed(1)} down`
                      : ''}
                  </span>
                </span>
                <Num why={WHY}>{`${log10Lr >= 0 ? '+' : '−'}${Math.abs(log10Lr).toFixed(1)}`}</Num>
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {cautions.map((caution) => (
        <p key={caution} className="detail">
          {caution}
        </p>
      ))}
    </section>
  );
}

const WHY =
  'Logarithm of the likelihood ratio: +1 means that this is ten times as probable under the first explanation as under the second, −1 the other way round. 0 tells nothing.';
