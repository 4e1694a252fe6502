import { useState } from 'react';
import type { Advised, DecideAnswer, WireSupposed } from '../../contract/index.ts';
import { Field } from '../claims/Field.tsx';
import { sayAmount, sayPercent } from '../words/index.ts';
import { SupposedField } from './SupposedField.tsx';
import { AS_IT_IS, countSupposed, instead, useAsked } from './supposed.ts';

interface Props {
  readonly copy: Advised;
  readonly answer: DecideAnswer;
}

/** Other values in the place of those on the desk: every answer follows, and nothing is written. */
export function WhatIf({ copy, answer }: Props) {
  const [{ supposed }, ask] = useAsked();
  const suppose = (change: Partial<WireSupposed>) => ask({ supposed: { ...supposed, ...change } });
  const parts = { copy, answer, supposed, suppose };
  return (
    <aside className="what-if" aria-label="What if">
      <h2>What if</h2>
      <p className="detail">Every answer follows as you type. Nothing is written.</p>
      <Prices {...parts} />
      {copy.options.length > 0 ? <Sending {...parts} /> : null}
      <Money {...parts} />
      <div className="acts">
        <button
          type="button"
          className="choice"
          disabled={countSupposed(supposed) === 0}
          onClick={() => ask({ supposed: AS_IT_IS })}
        >
          All as it is
        </button>
      </div>
    </aside>
  );
}

interface PartProps extends Props {
  readonly supposed: WireSupposed;
  readonly suppose: (change: Partial<WireSupposed>) => void;
}

/** What is asked for it, and what it may fetch. */
function Prices({ copy, answer: { currency }, supposed, suppose }: PartProps) {
  const { id, asked, keep, service, grade, status } = copy;
  const cell = { copy: id, service, grade };
  return (
    <>
      {asked !== null && status === 'offered' ? (
        <SupposedField
          label={`Asked for it, ${asked.currency}`}
          as={asked.price}
          value={supposed.asked.find(({ copy: of }) => of === id)?.price}
          set={(price) =>
            suppose({
              asked: instead(supposed.asked, { copy: id }, price ? { price } : undefined),
            })
          }
        />
      ) : null}
      {keep === null ? null : (
        <SupposedField
          label={`It may fetch ${service === null ? 'raw' : `as ${service} ${grade}`}, ${currency}`}
          as={keep.toFixed(2)}
          value={priceIn(supposed, cell)}
          set={(price) =>
            suppose({
              prices: instead(supposed.prices, cell, price ? { price: Number(price) } : undefined),
            })
          }
        />
      )}
    </>
  );
}

function priceIn(
  { prices }: WireSupposed,
  { copy, service, grade }: Omit<WireSupposed['prices'][number], 'price'>,
): string | undefined {
  const found = prices.find(
    (one) => one.copy === copy && one.service === service && one.grade === grade,
  );
  return found && String(found.price);
}

/** The service and tier that the copy is sent in to, and what may be otherwise there. */
function Sending(props: PartProps) {
  const { options, submit } = props.copy;
  const first = options.findIndex(
    ({ service, tier }) => service === submit?.service && tier === submit.tier,
  );
  const [chosen, choose] = useState(Math.max(0, first));
  const option = options[chosen] ?? options[0];
  if (!option) return null;
  return (
    <>
      <Field label="Sent in to">
        {(ties) => (
          <select {...ties} value={chosen} onChange={({ target }) => choose(Number(target.value))}>
            {options.map((one, at) => (
              <option key={`${one.service} ${one.tier}`} value={at}>
                {one.service}, {one.tier}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Fee {...props} option={option} />
      <Dearest {...props} option={option} />
    </>
  );
}

interface OptionProps extends PartProps {
  readonly option: Advised['options'][number];
}

function Fee({ answer, supposed, suppose, option: { service, tier } }: OptionProps) {
  const isIt = (one: { readonly service: string; readonly tier: string }) =>
    one.service === service && one.tier === tier;
  const entered = answer.tiers.find(isIt);
  if (!entered) return null;
  return (
    <SupposedField
      label={`Fee, ${entered.currency}`}
      as={entered.fee}
      value={supposed.fees.find(isIt)?.fee}
      set={(fee) =>
        suppose({ fees: instead(supposed.fees, { service, tier }, fee ? { fee } : undefined) })
      }
    />
  );
}

/** The chance of the dearest grade, and what it may fetch. */
function Dearest({ copy, answer, supposed, suppose, option: { service, outcomes } }: OptionProps) {
  const { grade, p, price } = outcomes.reduce((best, one) => (one.price > best.price ? one : best));
  const of = { copy: copy.id, service, grade };
  const chance = supposed.grades.find(
    (one) => one.copy === copy.id && one.service === service && one.grade === grade,
  )?.p;
  return (
    <>
      <Field
        label={`Chance of ${grade}: ${sayPercent(p)}`}
        hint={chance === undefined ? 'The other grades keep their shares.' : 'Supposed.'}
      >
        {(ties) => (
          <input
            {...ties}
            type="range"
            min="0"
            max="1"
            step="0.01"
            value={chance ?? p}
            onChange={({ target }) =>
              suppose({ grades: instead(supposed.grades, of, { p: Number(target.value) }) })
            }
          />
        )}
      </Field>
      <SupposedField
        label={`It may fetch as ${service} ${grade}, ${answer.currency}`}
        as={price.toFixed(2)}
        value={priceIn(supposed, of)}
        set={(text) =>
          suppose({
            prices: instead(supposed.prices, of, text ? { price: Number(text) } : undefined),
          })
        }
      />
    </>
  );
}

/** Rates of exchange and the rate of tax. */
function Money({ answer: { rates, taxRates, currency }, supposed, suppose }: PartProps) {
  return (
    <>
      {rates
        .filter((rate) => rate.currency !== currency)
        .map((rate) => (
          <SupposedField
            key={rate.currency}
            label={`${rate.currency} for one EUR`}
            as={String(Number(Number(rate.perEur).toPrecision(6)))}
            value={supposed.rates.find((one) => one.currency === rate.currency)?.perEur}
            set={(perEur) =>
              suppose({
                rates: instead(
                  supposed.rates,
                  { currency: rate.currency },
                  perEur ? { perEur } : undefined,
                ),
              })
            }
          />
        ))}
      {taxRates.length > 0 ? (
        <SupposedField
          label="Tax, %"
          as={taxRates.map((rate) => sayAmount(100 * rate)).join(' or ')}
          value={supposed.taxRate === null ? undefined : String(100 * supposed.taxRate)}
          set={(percent) =>
            suppose({ taxRate: percent === undefined ? null : Number(percent) / 100 })
          }
        />
      ) : null}
    </>
  );
}
