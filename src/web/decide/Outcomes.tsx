import type { Advised, DecideAnswer } from '../../contract/index.ts';
import { Chance, Num } from '../marks/index.ts';
import { sayAmount, sayMoney, sayPercent } from '../words/index.ts';

interface Props {
  readonly copy: Advised;
  readonly answer: DecideAnswer;
}

type Option = Advised['options'][number];

/** What each service might say, and what the copy may fetch then. */
export function Outcomes({ copy, answer }: Props) {
  return (
    <section>
      <h2>If it is sent in</h2>
      <h3>
        <span>To</span>
        <span>Expected gain, {answer.currency}, after fee and its share of postage</span>
      </h3>
      {copy.options.map((option) => (
        <details key={`${option.service} ${option.tier}`} className="outcomes">
          <summary>
            <span>
              {option.service}, {option.tier}
            </span>
            <span className="figure">
              {option.expectedGain - option.postageShare >= 0 ? '+' : '−'}
              {sayAmount(Math.abs(option.expectedGain - option.postageShare))}
            </span>
          </summary>
          <Grades option={option} answer={answer} />
          <p className="detail">{sayTerms(option, answer.currency)}</p>
        </details>
      ))}
    </section>
  );
}

interface GradesProps {
  readonly option: Option;
  readonly answer: DecideAnswer;
}

function Grades({ option: { outcomes, by, service }, answer }: GradesProps) {
  const why =
    by === 'examination'
      ? 'From the examination of this copy.'
      : `Share of the graded copies at ${service}, drawn towards its other printings. It flatters: people send in their best.`;
  return (
    <table className="list">
      <thead>
        <tr>
          <th scope="col">Grade</th>
          <th scope="col">Chance</th>
          <th scope="col" className="figure">
            May fetch, {answer.currency}
          </th>
        </tr>
      </thead>
      <tbody>
        {[...outcomes].reverse().map(({ grade, p, price }) => (
          <tr key={grade}>
            <th scope="row">{grade}</th>
            <td data-head="chance">
              <Chance p={p} why={`${sayPercent(p)}. ${why}`} />
            </td>
            <td className="figure" data-head="may fetch">
              <Num why="Median of the next sale at this grade, over the printings that it may be.">
                {sayAmount(price)}
              </Num>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function sayTerms(
  { spread, pLoss, upcharge, ungraded, postageShare, days }: Option,
  currency: string,
): string {
  const parts = [
    `Spread over the grades ${sayMoney(spread, currency)}`,
    `a chance of ${sayPercent(pLoss)} to be worth less than raw, fee and postage taken off`,
    `its share of a batch’s postage ${sayMoney(postageShare, currency)}`,
    ...(upcharge > 0 ? [`an upcharge of ${sayMoney(upcharge, currency)} is to be expected`] : []),
    ...(ungraded
      ? [
          `a chance of ${sayPercent(ungraded.p)} to come back without a grade, ${sayMoney(ungraded.cost, currency)} lost then`,
        ]
      : []),
    days === null ? 'how long it takes is not entered' : `${days} days away`,
  ];
  return `${parts.join('; ')}.`;
}
