import type { Phrases } from './types.ts';

const list = (items: readonly string[], last: string) =>
  items.join(last === 'or' ? 'または' : '、');

/** Japanese, in the polite form. */
export const JAPANESE: Phrases = {
  language: 'ja',
  locale: 'ja-JP',
  calendar: {
    day: (year, month, day) => `${year}年${month}月${day}日`,
    month: (year, month) => `${year}年${month}月`,
    year: (year) => `${year}年`,
    dayAlone: (day) => `${day}日`,
    monthDay: (month, day) => `${month}月${day}日`,
    monthAlone: (month) => `${month}月`,
    yearFirst: true,
  },
  vague: {
    between: (from, to) => `${from}から${to}までの間`,
    run: (from, to) => `${from}～${to}`,
    until: (day) => `${day}まで`,
    since: (day) => `${day}以降`,
    about: (day) => `${day}ごろ`,
    perhaps: (day) => `${day}か`,
    anyDay: '不明',
  },
  names: {
    locale: 'ja-JP',
    title: (place, what) => [what, place].filter(Boolean).join('、'),
    short: (language, what) => `${what}（${language}）`,
    printing: (place) => `${place}の版`,
    unnamed: (id) => `版 ${id}`,
    noNumber: '番号なし',
    plain: '通常',
    wave: (wave) => `第${wave}刷`,
  },
  certainty: {
    'almost-certain': 'ほぼ確実に',
    'most-probable': '十中八九',
    probable: 'おそらく',
    perhaps: 'もしかすると',
  },
  list,
  asOf: (value, day) => `${value}（${day}現在）`,
  interval: (low, high) => `${low}から${high}の間`,
  units: {
    printings: (n) => `${n}種の版`,
    sources: (n) => `${n}件の資料`,
    claims: (n) => `${n}件の記述`,
    copies: (n) => `${n}枚`,
  },
  sentences: {
    onDay: (how, day, p) => `発売日は${how}${day}です（確率 ${p}）。`,
    within: (from, to, p) => `発売日は${from}から${to}までの間です（確率 ${p}）。`,
    withinOne: (when, p) => `発売は${when}です（確率 ${p}）。`,
    leftBetween: (when) =>
      `発売日を記した資料はなく、ほかに分かっていることから${when}に絞られます。`,
    noLater: (day) => `遅くとも${day}には発売されていました。早い側の限りは分かりません。`,
    noEarlier: (day) => `発売は${day}より前ではありません。遅い側の限りは分かりません。`,
    open: '発売日を限る資料は一つもありません。',
    eitherOr: (modes) =>
      `資料は一通りには読めません：${list(
        modes.map(([when, p]) => `${when}（${p}）`),
        'or',
      )}。`,
    together: (others) => `今のところの資料では、${others}と同時に出ました。`,
    first: (how, of, p) => `${of}のうち${how}最も早いものです（確率 ${p}）。`,
    place: (place, of, how, after, p) =>
      `発売順では${of}のうち${place}番目です。${how}${after}より後に出ました（確率 ${p}）。`,
    placeStated: (place, of, after) =>
      `発売順では${of}のうち${place}番目です。${after}より後であることは確かな事実とされています。`,
    slip: (source, value, explanation, p) =>
      `${source}は${value}としています：${explanation}（正しい確率 ${p}）。`,
    mayBeRight: (source, value, p) =>
      `${source}は${value}としており、これが正しいこともありえます（確率 ${p}）。`,
    labelYear: (source, value, years) =>
      `この版のスラブのラベルには${value}とあります（${source}）。${Math.abs(years)}年${years > 0 ? '遅い' : '早い'}年です。`,
    counted: (service, _n, count, day) => `${service}の鑑定数は${day}現在で${count}枚です。`,
    estimated: (service, count, interval, day, lumped) =>
      `${service}の鑑定数は${day}現在で約${count}枚（${interval}）です。${lumped}と一緒に数えられています。`,
    topRate: (count, share, interval) =>
      `最高評価は${count}枚、そのうちの${share}です（${interval}）。持ち主が選んで出した枚数に限ります。`,
    extant: (count, interval, seen, again) =>
      `市場に現れうる鑑定済みの枚数は約${count}枚（${interval}）です。確認した証明番号${seen}件、うち再度見たもの${again}件によります。`,
    extantLower: (count, interval, seen, again) =>
      `市場に現れうる鑑定済みの枚数は少なくとも約${count}枚（${interval}）です。確認した証明番号${seen}件、うち再度見たもの${again}件によります。`,
    price: (what, amount, interval, sales) =>
      `${what}：次の取引は${amount}ほどで、10件中8件は${interval}に入ります。同じ条件の取引${sales}件によるもので、約束ではありません。`,
    raw: '未鑑定',
    graded: (service, grade) => `${service} ${grade}`,
  },
  readings: {
    right: '記述のとおり',
    'next-day': '日付変更線をまたいだような一日のずれ',
    'few-days': '数日のずれ',
    swapped: '日と月の取り違え',
    'first-of-month': '日の代わりにその月の一日',
    'year-off': '日は正しいが年が違う',
    'other-moment': '同じ発売の別の時点',
    'row-shift': '表の行のずれ',
    'filled-in': '多くの行を同じ日で埋めたもの',
    'cover-date': '表紙の日付を発売日としたもの',
    sibling: '同じ商品の別の発売の日',
    copied: 'ほかの資料を誤りごと写したもの',
    pen: '書き誤り',
    noise: '単なる誤り（知られた誤り方では説明できません）',
    lead: '予定であり、実際は別の時になったもの',
    bound: '発売日の限り',
    'cover-year': '表紙の年を発売の年としたもの',
  },
  properties: {
    'on-sale': '発売日',
    announced: '発売予定日',
    'cover-date': '表紙の日付',
    'label-year': 'ラベルの年',
    'copyright-year': '著作権表示の年',
    'printed-on': '印刷日',
    'seen-by': 'この日までに確認',
    'not-before': 'この日より前ではない',
    'unlisted-on': 'この日の一覧にはない',
    'distributed-until': '配布の終わり',
    'print-run': '発行枚数',
    number: '番号',
    finish: '加工',
    edition: 'エディション',
    wave: '刷',
    product: '商品',
    market: '市場',
    language: '言語',
    rarity: 'レアリティ',
    exists: '存在',
    art: '絵柄',
    channel: '販路',
    printed_name: '印刷された名前',
    printed_in: '印刷国',
  },
};
