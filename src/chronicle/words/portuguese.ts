import type { Phrases } from './types.ts';

const MONTHS = [
  ...['janeiro', 'fevereiro', 'março', 'abril', 'maio', 'junho', 'julho', 'agosto', 'setembro'],
  ...['outubro', 'novembro', 'dezembro'],
];
const monthOf = (month: number) => MONTHS[month - 1] ?? '';
const many = (n: number, one: string, more = `${one}s`) => (n === 1 ? one : more);
const list = (items: readonly string[], last: string) =>
  items.length < 2
    ? items.join('')
    : `${items.slice(0, -1).join(', ')} ${last === 'or' ? 'ou' : 'e'} ${items.at(-1)}`;

/** Portuguese, in words that both sides of the ocean use. */
export const PORTUGUESE: Phrases = {
  language: 'pt',
  locale: 'pt-BR',
  calendar: {
    day: (year, month, day) => `${day} de ${monthOf(month)} de ${year}`,
    month: (year, month) => `${monthOf(month)} de ${year}`,
    year: String,
    dayAlone: String,
    monthDay: (month, day) => `${day} de ${monthOf(month)}`,
    monthAlone: monthOf,
    yearFirst: false,
  },
  vague: {
    between: (from, to) => `entre ${from} e ${to}`,
    run: (from, to) => `${from} a ${to}`,
    until: (day) => `até ${day}`,
    since: (day) => `desde ${day}`,
    about: (day) => `por volta de ${day}`,
    perhaps: (day) => `talvez ${day}`,
    anyDay: 'qualquer dia',
  },
  names: {
    locale: 'pt-BR',
    title: (place, what) => [what, place].filter(Boolean).join(', '),
    short: (language, what) => `${what} (${language})`,
    printing: (place) => `impressão (${place})`,
    unnamed: (id) => `impressão ${id}`,
    noNumber: 'sem número',
    plain: 'comum',
    wave: (wave) => `${wave}.ª tiragem`,
  },
  certainty: {
    'almost-certain': 'quase certamente',
    'most-probable': 'muito provavelmente',
    probable: 'provavelmente',
    perhaps: 'talvez',
  },
  list,
  asOf: (value, day) => `${value} (em ${day})`,
  interval: (low, high) => `entre ${low} e ${high}`,
  units: {
    printings: (n, one) => `${n} ${one ? 'impressão' : 'impressões'}`,
    sources: (n, one) => `${n} ${one ? 'fonte' : 'fontes'}`,
    claims: (n, one) => `${n} ${one ? 'afirmação' : 'afirmações'}`,
    copies: (n, one) => `${n} ${one ? 'exemplar' : 'exemplares'}`,
  },
  sentences: {
    onDay: (how, day, p) => `Foi posta à venda ${how} em ${day} (probabilidade ${p}).`,
    within: (from, to, p) => `Foi posta à venda entre ${from} e ${to} (probabilidade ${p}).`,
    withinOne: (when, p) => `Foi posta à venda em ${when} (probabilidade ${p}).`,
    leftBetween: (when) => `Nenhuma fonte dá a data; o que mais se sabe deixa ${when}.`,
    noLater: (day) => `Foi posta à venda o mais tardar em ${day}; nada a limita antes.`,
    noEarlier: (day) => `Não foi posta à venda antes de ${day}; nada a limita depois.`,
    open: 'Nada nas fontes limita o dia em que foi posta à venda.',
    eitherOr: (modes) =>
      `As fontes podem ser lidas de mais de uma maneira: ${list(
        modes.map(([when, p]) => `${when} (${p})`),
        'or',
      )}.`,
    together: (others) => `Pelo que se sabe até agora, saiu junto com ${others}.`,
    first: (how, of, p) => `É ${how} a mais antiga de ${of} (probabilidade ${p}).`,
    place: (place, of, how, after, p) =>
      `É a n.º ${place} de ${of} na ordem de lançamento; veio ${how} depois de ${after} (probabilidade ${p}).`,
    placeStated: (place, of, after) =>
      `É a n.º ${place} de ${of} na ordem de lançamento; que veio depois de ${after} é dado como certo.`,
    slip: (source, value, explanation, p) =>
      `${source} traz ${value}: ${explanation} (probabilidade de estar certo: ${p}).`,
    mayBeRight: (source, value, p) =>
      `${source} traz ${value}, o que ainda pode estar certo (probabilidade ${p}).`,
    labelYear: (source, value, years) =>
      `As etiquetas desta impressão trazem ${value} (${source}), ${Math.abs(years)} ${many(Math.abs(years), 'ano')} ${years > 0 ? 'a mais' : 'a menos'}.`,
    counted: (service, n, count, day) =>
      `${service} tinha avaliado ${count} ${many(n, 'exemplar', 'exemplares')} até ${day}.`,
    estimated: (service, count, interval, day, lumped) =>
      `${service} tinha avaliado cerca de ${count} (${interval}) até ${day}, contados junto com ${lumped}.`,
    topRate: (count, share, interval) =>
      `Na nota máxima: ${count}, ${share} deles (${interval}); são exemplares que os donos escolheram enviar.`,
    extant: (count, interval, seen, again) =>
      `Cerca de ${count} exemplares certificados podem aparecer (${interval}), a julgar por ${seen} certificados vistos, ${again} deles de novo.`,
    extantLower: (count, interval, seen, again) =>
      `Pelo menos cerca de ${count} exemplares certificados podem aparecer (${interval}), a julgar por ${seen} certificados vistos, ${again} deles de novo.`,
    price: (what, amount, interval, sales) =>
      `${what}: a próxima venda pode sair por ${amount}; 8 de 10 ficam ${interval}. De ${sales} ${many(sales, 'venda')} deste tipo; não é promessa.`,
    raw: 'Sem avaliação',
    graded: (service, grade) => `${service} ${grade}`,
  },
  readings: {
    right: 'como diz',
    'next-day': 'um dia de diferença, como na linha da data',
    'few-days': 'alguns dias de diferença',
    swapped: 'dia e mês trocados',
    'first-of-month': 'o primeiro do mês no lugar do dia',
    'year-off': 'o dia certo no ano errado',
    'other-moment': 'outro momento do mesmo lançamento',
    'row-shift': 'uma linha fora do lugar na tabela',
    'filled-in': 'um só dia posto em muitas linhas',
    'cover-date': 'a data da capa tomada pelo dia da venda',
    sibling: 'o dia de outro lançamento do mesmo produto',
    copied: 'tirado de outra fonte com o seu lapso',
    pen: 'um lapso de escrita',
    noise: 'simplesmente errado: nenhum lapso conhecido o explica',
    lead: 'um plano, que se cumpriu em outro momento',
    bound: 'um limite para o dia',
    'cover-year': 'o ano da capa tomado pelo do lançamento',
  },
  properties: {
    'on-sale': 'à venda',
    announced: 'anunciada para',
    'cover-date': 'data da capa',
    'label-year': 'ano na etiqueta',
    'copyright-year': 'ano dos direitos autorais',
    'printed-on': 'impressa em',
    'seen-by': 'vista até',
    'not-before': 'não antes de',
    'unlisted-on': 'ainda não listada em',
    'distributed-until': 'distribuída até',
    'print-run': 'tiragem',
    number: 'número',
    finish: 'acabamento',
    edition: 'edição',
    wave: 'tiragem de impressão',
    product: 'produto',
    market: 'mercado',
    language: 'língua',
    rarity: 'raridade',
    exists: 'existe',
    art: 'arte',
    channel: 'canal',
    printed_name: 'nome impresso',
    printed_in: 'impressa no país',
  },
};
