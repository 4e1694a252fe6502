import type { Advised, DecideAnswer } from '../../contract/index.ts';
import { Num } from '../marks/index.ts';
import { sayAmount, sayMoney } from '../words/index.ts';
import { sayWay, whyWorth } from './tell.ts';

const WIDTH = 300;

interface Props {
  readonly copy: Advised;
  readonly answer: DecideAnswer;
}

/** The ways that are open side by side, each with what it is worth and its spread. */
export function Ways({ copy, answer }: Props) {
  const { currency } = answer;
  const at = scaleOf([copy]);
  const landed = landedOf(copy);
  const isBest = (way: Advised['ways'][number]) =>
    way.way === copy.advice &&
    (way.way !== 'submit' ||
      (way.service === copy.submit?.service && way.tier === copy.submit.tier));
  return (
    <div className="wide">
      <table className="list brief ways">
        <thead>
          <tr>
            <th scope="col">Way</th>
            <th scope="col" className="figure">
              Expected, {currency}
            </th>
            <th scope="col" className="figure">
              80 % between
            </th>
            <th scope="col">
              {landed === null ? null : <>landed {sayMoney(landed, currency)}, the dashed line</>}
            </th>
          </tr>
        </thead>
        <tbody>
          {copy.ways.map((way) => (
            <tr key={`${way.way} ${way.service} ${way.tier}`} className={isBest(way) ? 'best' : ''}>
              <th scope="row">{sayWay(way, copy.service === null)}</th>
              <td className="figure">
                <Num why={whyWorth(way, answer)}>{sayAmount(way.worth)}</Num>
              </td>
              <td className="figure">{saySpread(way.interval80)}</td>
              <td className="drawn">
                <Spread way={way} at={at} landed={landed} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function saySpread([low, high]: readonly [number, number]): string {
  return low === high ? 'as agreed' : `${sayAmount(low)} and ${sayAmount(high)}`;
}

/** Where an amount stands on a drawing that holds all ways of some copies and what they cost. */
export function scaleOf(copies: readonly Advised[]): (amount: number) => number {
  const amounts = copies.flatMap((copy) => [
    landedOf(copy) ?? 0,
    ...copy.ways.flatMap(({ interval80, worth }) => [...interval80, worth]),
  ]);
  const most = Math.max(1, ...amounts);
  const least = Math.min(0, ...amounts);
  return (amount) => 3 + ((WIDTH - 6) * (amount - least)) / (most - least);
}

/** What a copy cost, or would cost, landed; null where that is not known. */
export function landedOf({ landed }: Advised): number | null {
  return 'why' in landed ? null : Number(landed.total);
}

interface SpreadProps {
  readonly way: Advised['ways'][number];
  readonly at: (amount: number) => number;
  readonly landed: number | null;
}

/** One way as a dimension on a drawing: its interval, its expectation, and what the copy cost. */
function Spread({ way: { worth, interval80 }, at, landed }: SpreadProps) {
  const [low, high] = interval80.map(at) as [number, number];
  return (
    <svg className="spread" viewBox={`0 0 ${WIDTH} 20`} aria-hidden="true">
      <path className="ground" d={`M0 10H${WIDTH}`} />
      {landed === null ? null : <path className="landed" d={`M${at(landed)} 0V20`} />}
      {low === high ? null : (
        <path className="span" d={`M${low} 6v8M${low} 10H${high}M${high} 6v8`} />
      )}
      <rect className="best" x={at(worth) - 2} y="4" width="4" height="12" />
    </svg>
  );
}
