import type { Measure, Side } from '../grade/types.ts';

/** What condition words promise of one measure. */
export interface Meaning {
  /** As sellers write them; letter case and width do not matter. */
  readonly words: string;
  /** The face that is meant; null: each of them. */
  readonly side: Side | null;
  readonly measure: Measure;
  /** The most that the words allow on one face, in the unit of the measure; null: they say that there is some. */
  readonly atMost: number | null;
}

/** Limits by measure that a whole condition allows. */
type Condition = Readonly<Partial<Record<Measure, number>>>;

const TOP: Condition = {
  'corner-wear': 0.1,
  'edge-wear': 0.2,
  scratch: 2,
  dent: 0,
  crease: 0,
  speck: 2,
  stain: 0,
};
const NEAR: Condition = {
  'corner-wear': 0.6,
  'edge-wear': 1.2,
  scratch: 12,
  dent: 0.4,
  crease: 0,
  speck: 6,
  stain: 0.5,
};
const LIGHT: Condition = {
  'corner-wear': 3,
  'edge-wear': 6,
  scratch: 60,
  dent: 2,
  crease: 0,
  speck: 25,
  stain: 3,
};
const PLAYED: Condition = { 'corner-wear': 12, 'edge-wear': 25, dent: 8, crease: 10, stain: 20 };

/** Condition words of several languages. Common practice, no source: venues define their own. */
const CONDITIONS: readonly (readonly [Condition, readonly string[]])[] = [
  [TOP, ['mint', 'gem mint', 'pack fresh', 'mint condition', '完美品', '미개봉급', 'impecável']],
  [
    NEAR,
    [
      ...[
        'near mint',
        'nm',
        'nm-mt',
        'near-mint',
        'unplayed',
        '美品',
        '極美品',
        '상태 좋음',
        '민트급',
      ],
      ...[
        'muito bem conservada',
        'muito bem conservado',
        'quase nova',
        'hyväkuntoinen',
        'uudenveroinen',
      ],
    ],
  ],
  [
    LIGHT,
    [
      'lightly played',
      'excellent',
      'light play',
      'bem conservada',
      '良品',
      '사용감 약간',
      'siisti',
    ],
  ],
  [PLAYED, ['played', 'moderately played', 'very good', 'good', '並品', 'usada', 'pelattu']],
];

/** Words about one thing. Common practice, no source. */
const THINGS: readonly (readonly [Measure, number | null, readonly string[]])[] = [
  [
    'corner-wear',
    0.1,
    ['sharp corners', 'perfect corners', 'cantos perfeitos', '角スレなし', '모서리 깨끗'],
  ],
  [
    'edge-wear',
    0.2,
    ['clean edges', 'no whitening', 'no edge wear', 'sem branqueamento', '白かけなし', '백화 없음'],
  ],
  [
    'scratch',
    2,
    ['no scratches', 'scratch free', 'scratch-free', 'sem riscos', '傷なし', '스크래치 없음'],
  ],
  [
    'scratch',
    null,
    [
      'light scratch',
      'hairline',
      'small scratch',
      'risquinho',
      'risco leve',
      '小傷あり',
      '미세 스크래치',
    ],
  ],
  ['dent', 0, ['no dents', 'sem amassados', '凹みなし', '찍힘 없음']],
  ['dent', null, ['small dent', 'amassado leve', '凹みあり', '찍힘 있음']],
  ['crease', 0, ['no creases', 'no bends', 'sem vincos', 'sem dobras', '折れなし', '꺾임 없음']],
  ['crease', null, ['small crease', 'slight bend', 'vinco leve', '折れあり', '꺾임 있음']],
  [
    'centering',
    57,
    [
      'perfectly centred',
      'perfectly centered',
      'perfect centering',
      'well centred',
      'well centered',
      'bem centralizada',
    ],
  ],
];

/** The words that stand until the collector's own `desk/words.csv` takes their place. */
export const USUAL_WORDS: readonly Meaning[] = [
  ...CONDITIONS.flatMap(([condition, phrases]) =>
    phrases.flatMap((words) =>
      Object.entries(condition).map(([measure, atMost]) => ({
        words,
        side: null,
        measure: measure as Measure,
        atMost,
      })),
    ),
  ),
  ...THINGS.flatMap(([measure, atMost, phrases]) =>
    phrases.map((words) => ({ words, side: null, measure, atMost })),
  ),
];
