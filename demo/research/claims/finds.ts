import { claimsOf, type Statement } from './statement.ts';

const board = claimsOf('fenboard', '2026-01-19');
const shop = claimsOf('shop-notices', '2025-08-22');
const hand = claimsOf('in-hand', '2026-04-06');

/** What collectors wrote at the time, and what they remembered later. */
export const FENBOARD: readonly Statement[] = [
  board('fi-supplement', 'seen-by', '1994-04-04', 'bound', {
    at: 'newsgroup, message 118',
    stated: '1994-04-05',
    quote: 'ostin eilen kioskilta, lehden välissä oli kortti',
  }),
  board('gb-second', 'seen-by', '1995-05-20', 'bound', {
    at: 'newsgroup, message 840',
    stated: '1995-05-20',
    quote: 'Anyone else find a washed-out hare in a new Starter Box today?',
  }),
  board('br-plain', 'on-sale', '1995-08-16', 'right', {
    at: 'newsgroup, message 972',
    stated: '1995-08-16',
    quote: 'Saiu hoje! Comprei duas caixas na hora do almoço.',
  }),
  board('br-foil', 'seen-by', '1995-09-02', 'bound', {
    at: 'newsgroup, message 991',
    stated: '1995-09-03',
    quote: 'Tirei uma prateada ontem na feira!',
  }),
  board('kr-starter', 'on-sale', '[1996-02-08,1996-08-02]', 'right', {
    at: 'thread 2044, post 7',
    stated: '2009',
    quote: 'my box has 8/2/96 pencilled in the lid, the day they had it',
    note: 'Day or month first is not known: both are kept.',
  }),
  board('kr-january', 'seen-by', '1997-11-24', 'bound', {
    at: 'newsgroup, message 2310',
    stated: '1997-11-24',
    quote: '1월호 벌써 나왔어요. 토끼가 반짝입니다.',
    note: 'Entered under the id that this printing had before.',
  }),
  board('pl-box', 'on-sale', '1999-01?', 'right', {
    at: 'thread 310, post 2',
    stated: '2003-02-08',
    quote: 'jakoś na początku stycznia 1999',
  }),
  board('fi-tin', 'seen-by', '2002-05-0X', 'bound', {
    at: 'thread 871, post 1',
    stated: '2002-05-09',
    quote: 'peltirasia löytyi tällä viikolla',
  }),
  board('br-mosaic', 'on-sale', '200X', 'right', {
    at: 'thread 2044, post 15',
    stated: '2009',
    quote: 'depois de 2000, isso eu sei',
  }),
  board('kr-club', 'exists', 'yes', 'fact', {
    at: 'thread 1502, post 4',
    quote: '모임에서 우편으로 받았습니다. 사진 첨부.',
  }),
  board('kr-road-foil', 'finish', 'holofoil', 'wrong', { at: 'thread 3120, post 1' }),
  board('pl-road', 'on-sale', '2007-09-11', 'right', {
    at: 'thread 3188, post 1',
    stated: '2007-09-11',
    quote: 'W końcu! Od dziś na półce.',
  }),
];

/** Five shops, from Leeds to Gdynia; none of them is there any more. */
export const SHOPS: readonly Statement[] = [
  shop('gb-first', 'unlisted-on', '1994-09-19', 'bound', {
    at: 'Harker Stile, list 14',
    quote: 'Ninefen: nothing yet, despite promises',
    stated: '1994-09-19',
  }),
  shop('gb-first', 'on-sale', '1994-10-07', 'right', {
    at: 'Harker Stile, card in the window',
    quote: 'NINEFEN IS HERE. Friday 7th',
    stated: '1994-10-07',
  }),
  shop('gb-second', 'on-sale', '[1995-05-08..1995-05-14]', 'right', {
    at: 'Harker Stile, list 21',
    quote: 'new printing of the Starter this week',
    stated: '1995-05-13',
  }),
  shop('br-plain', 'unlisted-on', '1995-08-11', 'bound', {
    at: 'Loja Pindoré, lista 1',
    quote: 'Caixa Inicial: ainda não chegou. Ligue na quarta.',
    stated: '1995-08-11',
  }),
  shop('br-plain', 'on-sale', '1995-08-16', 'right', {
    at: 'Loja Pindoré, mural',
    quote: 'Chegou hoje! Caixa Inicial Ninefen.',
    stated: '1995-08-16',
  }),
  shop('br-second', 'on-sale', '1996-06-12', 'right', {
    at: 'Loja Pindoré, lista 7',
    stated: '1996-06-20',
    quote: 'Segunda tiragem da Caixa Inicial na loja desde 12 de junho.',
  }),
  shop('br-second', 'distributed-until', '1996-12', 'bound', {
    at: 'Loja Pindoré, lista 9',
    quote: 'segunda tiragem: até o fim de dezembro',
    stated: '1996-11',
  }),
  shop('br-mosaic', 'on-sale', '2001-11-14', 'right', {
    at: 'Loja Pindoré, cartaz',
    quote: 'Caixa Verão: a partir de quarta, 14/11',
    stated: '2001-11-10',
  }),
  shop('kr-starter', 'on-sale', '1996-02-08', 'right', {
    at: '너울섬 문구, 입고 장부',
    quote: '나인펜 입문 상자 20개, 2월 8일 입고',
    stated: '1996-02-08',
  }),
  shop('kr-monthly', 'on-sale', '1997-11-XX', 'right', {
    at: '너울섬 문구, 입고 장부',
    quote: '주사위골 신년호, 11월 하순',
    stated: '1997-12-01',
  }),
  shop('pl-box', 'unlisted-on', '1998-12-23', 'bound', {
    at: 'Zajęczy Kamień, cennik',
    quote: 'Pudełka startowego wciąż nie ma.',
    stated: '1998-12-23',
  }),
  shop('gb-annual', 'on-sale', '1999-10-15', 'right', {
    at: 'Harker Stile, list 63',
    quote: 'Annual in this morning, hare inside',
    stated: '1999-10-15',
  }),
  shop('kr-road-matte|kr-road-foil', 'on-sale', '2007-06-14', 'right', {
    at: '너울섬 문구, 누리집 (kept page)',
    quote: '길 위의 상자, 6월 14일부터 판매합니다.',
    stated: '2007-06-11',
  }),
  shop('pl-road', 'unlisted-on', '2007-08-27', 'bound', {
    at: 'Zajęczy Kamień, cennik',
    quote: 'Pudełka Drogi jeszcze u nas nie ma.',
    stated: '2007-08-27',
  }),
];

/** Lines on the things themselves, and receipts. */
export const IN_HAND: readonly Statement[] = [
  hand('fi-supplement', 'copyright-year', '1993', 'bound', {
    at: 'card, lower edge',
    quote: '© 1993 Quenby Marl',
  }),
  hand('gb-first', 'copyright-year', '1993', 'bound', { at: 'card, lower edge' }),
  hand('gb-first', 'seen-by', '1994-10-08', 'bound', {
    at: 'receipt',
    quote: '8 OCT 94  14:12  NINEFEN STARTER 9.95',
  }),
  hand('gb-second', 'printed-on', '1995-04-24', 'bound', {
    at: 'box bottom, printer’s slip',
    quote: 'PTD 24.04.95',
  }),
  hand('br-plain', 'not-before', '1995-08', 'bound', {
    at: 'leaflet in the box',
    quote: 'Promoção válida a partir de agosto de 1995',
  }),
  hand('br-second', 'not-before', '1996-06-10', 'bound', {
    at: 'sticker on the box',
    quote: 'Conferido no depósito 10/06/96',
  }),
  hand('br-mosaic', 'not-before', '2001-11-12', 'bound', {
    at: 'leaflet in the box',
    quote: 'Concurso de verão: inscrições a partir de 12/11/2001',
  }),
  hand('pl-box', 'seen-by', '1999-01-09', 'bound', {
    at: 'receipt',
    quote: '09-01-1999 PUDEŁKO START. 39,90',
  }),
  hand('@annual-2000', 'cover-date', '2000', 'lead', {
    at: 'cover',
    quote: 'The Ninefen Annual 2000',
  }),
  hand('gb-annual', 'copyright-year', '1999', 'bound', { at: 'title page, verso' }),
  hand('fi-tin', 'seen-by', '2002-05-04', 'bound', {
    at: 'kuitti',
    quote: '4.5.2002 PELTIRASIA 14,90',
  }),
  hand('kr-club', 'exists', 'yes', 'fact', { at: 'photograph of a copy lent by a member' }),
  hand('kr-club', 'number', 'C-5', 'fact', { at: 'card, lower right' }),
  hand('pl-box', 'number', 'P31', 'fact', { at: 'card, lower right' }),
  hand('kr-road-foil', 'finish', 'foil', 'fact', { at: 'card, under a lamp' }),
  hand('pl-road', 'seen-by', '2007-09-15', 'bound', {
    at: 'receipt',
    quote: '15-09-2007 PUDEŁKO DROGI 89,90',
  }),
];
