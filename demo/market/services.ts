import type { Row } from '../table.ts';

/** A grading service of the invented world, and how strictly it grades. */
export interface Service {
  readonly id: string;
  /** Worst to best. */
  readonly grades: readonly string[];
  /** Of one hundred copies sent in, how many get each grade in the end, worst to best. */
  readonly shares: readonly number[];
  /** What a copy of the middling grade costs beside a raw one. */
  readonly premium: number;
  /** First certificate number of each year's block. */
  readonly blocks: readonly (readonly [from: number, to: number, period: string])[];
}

export const PLUMB: Service = {
  id: 'plumb-assay',
  grades: ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'],
  shares: [1, 1, 2, 3, 6, 9, 15, 27, 28, 8],
  premium: 1.25,
  blocks: [
    [40_100_000, 40_399_999, '2019/2021'],
    [40_400_000, 40_699_999, '2022/2023'],
    [40_700_000, 40_999_999, '2024/2026-06'],
  ],
};

export const OSTREL: Service = {
  id: 'ostrel',
  grades: ['5', '6', '7', '7.5', '8', '8.5', '9', '9.5', '10'],
  shares: [3, 5, 9, 10, 19, 20, 21, 10, 3],
  premium: 1.15,
  blocks: [
    [210_001, 239_999, '2020/2022'],
    [240_000, 299_999, '2023/2026-06~'],
  ],
};

export const SORIMAE: Service = {
  id: 'sorimae',
  grades: ['D', 'C', 'B', 'A', 'A+', 'S'],
  shares: [2, 6, 18, 38, 27, 9],
  premium: 1.1,
  blocks: [[7_000_001, 7_099_999, '2022/2026-06']],
};

export const SERVICES: readonly Service[] = [PLUMB, OSTREL, SORIMAE];

/** Rows of `services.csv`. */
export const SERVICE_ROWS: readonly Row[] = [
  {
    id: 'plumb-assay',
    title: 'Plumb Assay',
    grades: PLUMB.grades.join('|'),
    top: '10',
    off_scale: 'authentic|altered',
  },
  {
    id: 'ostrel',
    title: 'Ostrel Bureau',
    grades: OSTREL.grades.join('|'),
    top: '9.5',
    off_scale: 'authentic',
  },
  {
    id: 'sorimae',
    title: '소리매 감정',
    grades: SORIMAE.grades.join('|'),
    top: 'S',
    off_scale: 'altered|refused',
  },
];

/** Rows of `certificates.csv`. */
export const CERTIFICATE_ROWS: readonly Row[] = SERVICES.flatMap((service) =>
  service.blocks.map(([from, to, period]) => ({
    service: service.id,
    from: String(from),
    to: String(to),
    period,
  })),
);
