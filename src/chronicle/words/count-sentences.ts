import type { Count, ToldPrice, ToldPrinting } from '../account/types.ts';
import { priceName } from '../figures/figures.ts';
import { tellEdtf } from './days.ts';
import { countInterval, shareInterval } from './figures.ts';
import { tellAmount, tellCount, tellShare } from './numbers.ts';
import type { Sentence, Telling } from './telling.ts';

/** How many copies are graded, how many can turn up and what one may fetch, as sentences. */
export function countSentences(printing: ToldPrinting, telling: Telling): Sentence[] {
  const { id, counts, extant, prices } = printing;
  const { sentences } = telling.phrases;
  const extants =
    extant === null
      ? []
      : [extant].map(({ estimate, interval95, bound, seen, again }) => {
          const { phrases } = telling;
          const say = bound === 'lower' ? sentences.extantLower : sentences.extant;
          const [about, n, m] = [estimate, seen, again].map((one) => tellCount(phrases, one));
          const text = say(about ?? '', countInterval(interval95, phrases), n ?? '', m ?? '');
          return { figure: `extant.${id}`, text };
        });
  return [
    ...counts.flatMap((count) => serviceSentences(id, count, telling)),
    ...extants,
    ...prices.map((price) => priceSentence(id, price, telling)),
  ];
}

function serviceSentences(id: string, count: Count, telling: Telling): Sentence[] {
  const { phrases, service, called } = telling;
  const { sentences, list } = phrases;
  const { total, total95, top, rate, rate95, lumpedWith } = count;
  const [name, day] = [service(count.service), tellEdtf(phrases, count.asOf)];
  const said = tellCount(phrases, total);
  const text =
    lumpedWith.length === 0
      ? sentences.counted(name, total, said, day)
      : sentences.estimated(
          name,
          said,
          countInterval(total95, phrases),
          day,
          list(lumpedWith.map(called), 'and'),
        );
  const whole = { figure: `population.${id}.${count.service}`, text };
  if (rate === null) return [whole];
  const share = tellShare(phrases, rate);
  const best = sentences.topRate(tellCount(phrases, top), share, shareInterval(rate95, phrases));
  return [whole, { figure: `top.${id}.${count.service}`, text: best }];
}

function priceSentence(
  id: string,
  price: ToldPrice,
  { account, phrases, service }: Telling,
): Sentence {
  const { sentences, interval } = phrases;
  const what =
    price.service === null
      ? sentences.raw
      : sentences.graded(service(price.service), price.grade ?? '');
  const [middle = '', low = '', high = ''] = [price.median, ...price.interval80].map((amount) =>
    tellAmount(phrases, amount, account.currency ?? 'EUR'),
  );
  const text = sentences.price(what, middle, interval(low, high), price.sales);
  return { figure: priceName(id, price), text };
}
