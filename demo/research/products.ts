import type { Row } from '../table.ts';

const SAVUKUIKKA = ['05', '06', '07', '08'].map((issue) => ({
  id: `savukuikka-1994-${issue}`,
  title: `Savukuikka ${Number(issue)}/1994`,
  kind: 'periodical',
  market: 'FI',
  series: 'Savukuikka',
  issue: `${Number(issue)}/1994`,
}));

const JUSAWIGOL = ['1997-11', '1997-12', '1998-01', '1998-02', '1998-03'].map((month) => ({
  id: `jusawigol-${month}`,
  title: `월간 주사위골 ${month.slice(0, 4)}년 ${Number(month.slice(5))}월호`,
  kind: 'periodical',
  market: 'KR',
  series: '월간 주사위골',
  issue: month,
  list_price: '4500',
  currency: 'KRW',
}));

/** What the printings were sold or given in. */
export const PRODUCTS: readonly Row[] = [
  ...SAVUKUIKKA,
  {
    id: 'starter-box',
    title: 'Ninefen Starter Box',
    kind: 'box',
    market: 'GB',
    list_price: '9.95',
    currency: 'GBP',
  },
  {
    id: 'caixa-inicial',
    title: 'Ninefen: Caixa Inicial',
    kind: 'box',
    market: 'BR',
    list_price: '14.90',
    currency: 'BRL',
  },
  {
    id: 'caixa-inicial-2',
    title: 'Ninefen: Caixa Inicial, segunda tiragem',
    kind: 'box',
    market: 'BR',
    list_price: '15.90',
    currency: 'BRL',
  },
  {
    id: 'ipmun-sangja',
    title: '나인펜 입문 상자',
    kind: 'box',
    market: 'KR',
    list_price: '9800',
    currency: 'KRW',
  },
  ...JUSAWIGOL,
  {
    id: 'pudelko-startowe',
    title: 'Ninefen: Pudełko startowe',
    kind: 'box',
    market: 'PL',
    list_price: '39.90',
    currency: 'PLN',
  },
  {
    id: 'annual-2000',
    title: 'The Ninefen Annual 2000',
    kind: 'book',
    market: 'GB',
    series: 'The Ninefen Annual',
    issue: '2000',
    list_price: '6.99',
    currency: 'GBP',
  },
  {
    id: 'gift-tin-1999',
    title: 'Ninefen Winter Gift Tin',
    kind: 'tin',
    market: 'GB',
    list_price: '12.99',
    currency: 'GBP',
  },
  { id: 'club-mailing', title: '주사위골 모임 우편', kind: 'mailing', market: 'KR' },
  {
    id: 'caixa-verao',
    title: 'Ninefen: Caixa Verão',
    kind: 'box',
    market: 'BR',
    list_price: '29.90',
    currency: 'BRL',
  },
  {
    id: 'peltirasia',
    title: 'Ninefen-peltirasia',
    kind: 'tin',
    market: 'FI',
    list_price: '14.90',
    currency: 'EUR',
  },
  { id: 'road-box', title: 'Ninefen Road Box', kind: 'box' },
];

/** What lies in which product. */
export const CONTENTS: readonly Row[] = [
  { product: 'savukuikka-1994-07', printing: 'fi-supplement', odds: '1' },
  { product: 'starter-box', printing: 'gb-first', odds: '1' },
  { product: 'starter-box', printing: 'gb-second', odds: '1' },
  { product: 'caixa-inicial', printing: 'br-plain', odds: '7/8' },
  { product: 'caixa-inicial', printing: 'br-foil', odds: '1/8' },
  { product: 'caixa-inicial-2', printing: 'br-second', odds: '1' },
  { product: 'ipmun-sangja', printing: 'kr-starter', odds: '1' },
  { product: 'jusawigol-1998-01', printing: 'kr-monthly', odds: '1' },
  { product: 'pudelko-startowe', printing: 'pl-box', odds: '1' },
  { product: 'annual-2000', printing: 'gb-annual', odds: '1' },
  { product: 'gift-tin-1999', printing: 'gb-annual', odds: '1/3' },
  { product: 'club-mailing', printing: 'kr-club', odds: '1' },
  { product: 'caixa-verao', printing: 'br-mosaic', odds: '1/4' },
  { product: 'peltirasia', printing: 'fi-tin', odds: '1' },
  { product: 'road-box', printing: 'kr-road-matte', odds: '3/4' },
  { product: 'road-box', printing: 'kr-road-foil', odds: '1/4' },
  { product: 'road-box', printing: 'pl-road', odds: '1' },
];
