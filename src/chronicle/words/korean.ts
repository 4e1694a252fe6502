import type { Phrases } from './types.ts';

const list = (items: readonly string[], last: string) =>
  items.join(last === 'or' ? ' 또는 ' : ', ');

/**
 * Korean, in the polite form. Particles that hang on the sound before them are avoided after names
 * and numbers.
 */
export const KOREAN: Phrases = {
  language: 'ko',
  locale: 'ko-KR',
  calendar: {
    day: (year, month, day) => `${year}년 ${month}월 ${day}일`,
    month: (year, month) => `${year}년 ${month}월`,
    year: (year) => `${year}년`,
    dayAlone: (day) => `${day}일`,
    monthDay: (month, day) => `${month}월 ${day}일`,
    monthAlone: (month) => `${month}월`,
    yearFirst: true,
  },
  vague: {
    between: (from, to) => `${from}에서 ${to} 사이`,
    run: (from, to) => `${from}~${to}`,
    until: (day) => `${day}까지`,
    since: (day) => `${day}부터`,
    about: (day) => `${day}쯤`,
    perhaps: (day) => `아마 ${day}`,
    anyDay: '알 수 없음',
  },
  names: {
    locale: 'ko-KR',
    title: (place, what) => [what, place].filter(Boolean).join(', '),
    short: (language, what) => `${what}(${language})`,
    printing: (place) => `${place} 판`,
    unnamed: (id) => `판 ${id}`,
    noNumber: '번호 없음',
    plain: '일반',
    wave: (wave) => `${wave}쇄`,
  },
  certainty: {
    'almost-certain': '거의 확실히',
    'most-probable': '십중팔구',
    probable: '아마도',
    perhaps: '어쩌면',
  },
  list,
  asOf: (value, day) => `${value}(${day} 기준)`,
  interval: (low, high) => `${low}에서 ${high} 사이`,
  units: {
    printings: (n) => `판 ${n}종`,
    sources: (n) => `자료 ${n}건`,
    claims: (n) => `기록 ${n}건`,
    copies: (n) => `${n}장`,
  },
  sentences: {
    onDay: (how, day, p) => `발매일은 ${how} ${day}입니다(확률 ${p}).`,
    within: (from, to, p) => `발매일은 ${from}에서 ${to} 사이입니다(확률 ${p}).`,
    withinOne: (when, p) => `발매 시기는 ${when}입니다(확률 ${p}).`,
    leftBetween: (when) =>
      `발매일을 적은 자료는 없으며, 달리 알려진 것으로 보아 ${when}로 좁혀집니다.`,
    noLater: (day) => `늦어도 ${day}에는 나와 있었습니다. 이른 쪽의 한계는 알 수 없습니다.`,
    noEarlier: (day) => `${day} 전에는 나오지 않았습니다. 늦은 쪽의 한계는 알 수 없습니다.`,
    open: '발매일의 범위를 알려 주는 자료가 없습니다.',
    eitherOr: (modes) =>
      `자료는 한 가지로만 읽히지 않습니다: ${list(
        modes.map(([when, p]) => `${when}(${p})`),
        'or',
      )}.`,
    together: (others) => `지금까지의 자료로는 다음과 함께 나왔습니다: ${others}.`,
    first: (how, of, p) => `${of} 가운데 ${how} 가장 이릅니다(확률 ${p}).`,
    place: (place, of, how, after, p) =>
      `발매 순서로는 ${of} 가운데 ${place}번째입니다. ${how} ${after} 다음에 나왔습니다(확률 ${p}).`,
    placeStated: (place, of, after) =>
      `발매 순서로는 ${of} 가운데 ${place}번째입니다. ${after} 다음이라는 것은 확실한 사실로 적혀 있습니다.`,
    slip: (source, value, explanation, p) => `${source}: ${value}. ${explanation}(옳을 확률 ${p}).`,
    mayBeRight: (source, value, p) => `${source}: ${value}. 이것이 옳을 수도 있습니다(확률 ${p}).`,
    labelYear: (source, value, years) =>
      `이 판의 슬랩 라벨에는 ${value}로 적혀 있습니다(${source}). ${Math.abs(years)}년 ${years > 0 ? '늦은' : '이른'} 해입니다.`,
    counted: (service, _n, count, day) => `${service}: ${day} 기준 감정 수 ${count}장.`,
    estimated: (service, count, interval, day, lumped) =>
      `${service}: ${day} 기준 감정 수 약 ${count}장(${interval}). 다음과 함께 세어져 있습니다: ${lumped}.`,
    topRate: (count, share, interval) =>
      `최고 등급 ${count}장, 그 가운데 ${share}(${interval}). 주인이 골라서 보낸 것만 센 수입니다.`,
    extant: (count, interval, seen, again) =>
      `나타날 수 있는 감정품은 약 ${count}장(${interval})입니다. 확인된 인증 번호 ${seen}건, 그중 다시 보인 것 ${again}건으로 헤아렸습니다.`,
    extantLower: (count, interval, seen, again) =>
      `나타날 수 있는 감정품은 적어도 약 ${count}장(${interval})입니다. 확인된 인증 번호 ${seen}건, 그중 다시 보인 것 ${again}건으로 헤아렸습니다.`,
    price: (what, amount, interval, sales) =>
      `${what}: 다음 거래가는 ${amount}쯤이며 열 건 중 여덟 건은 ${interval}입니다. 같은 조건의 거래 ${sales}건에 따른 것이며 약속이 아닙니다.`,
    raw: '미감정',
    graded: (service, grade) => `${service} ${grade}`,
  },
  readings: {
    right: '적힌 대로',
    'next-day': '날짜 변경선을 넘은 듯한 하루 차이',
    'few-days': '며칠 차이',
    swapped: '날과 달이 뒤바뀜',
    'first-of-month': '날 대신 그달의 1일',
    'year-off': '날은 맞으나 해가 다름',
    'other-moment': '같은 발매의 다른 시점',
    'row-shift': '표에서 줄이 밀림',
    'filled-in': '여러 줄을 같은 날로 채움',
    'cover-date': '표지 날짜를 발매일로 삼음',
    sibling: '같은 상품의 다른 발매일',
    copied: '다른 자료를 잘못까지 옮김',
    pen: '잘못 적음',
    noise: '단순한 잘못(알려진 방식으로는 설명되지 않음)',
    lead: '계획이며 실제로는 다른 때에 이루어짐',
    bound: '발매일의 한계',
    'cover-year': '표지의 해를 발매한 해로 삼음',
  },
  properties: {
    'on-sale': '발매일',
    announced: '발매 예정일',
    'cover-date': '표지 날짜',
    'label-year': '라벨 연도',
    'copyright-year': '저작권 표시 연도',
    'printed-on': '인쇄일',
    'seen-by': '이날까지 확인됨',
    'not-before': '이날 전은 아님',
    'unlisted-on': '이날 목록에 없음',
    'distributed-until': '배포 종료',
    'print-run': '발행 수량',
    number: '번호',
    finish: '마감',
    edition: '에디션',
    wave: '쇄',
    product: '상품',
    market: '시장',
    language: '언어',
    rarity: '희귀도',
    exists: '존재',
    art: '그림',
    channel: '유통 경로',
    printed_name: '인쇄된 이름',
    printed_in: '인쇄 국가',
  },
};
