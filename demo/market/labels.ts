/** A label of a population report, with what is truly counted under it at the newest report. */
export interface Label {
  readonly service: string;
  readonly label: string;
  /** Copies of each printing, graded by the end of June 2026. */
  readonly copies: Readonly<Record<string, number>>;
  /** As the collector confirmed it; empty where it is still to be matched. */
  readonly confirmed?: string;
  /** A report from which the label is missing. */
  readonly missingOn?: string;
}

const plumb = (label: string, copies: Label['copies'], more: Partial<Label> = {}): Label => ({
  service: 'plumb-assay',
  label,
  copies,
  ...more,
});
const ostrel = (label: string, copies: Label['copies'], more: Partial<Label> = {}): Label => ({
  service: 'ostrel',
  label,
  copies,
  ...more,
});
const sorimae = (label: string, copies: Label['copies'], more: Partial<Label> = {}): Label => ({
  service: 'sorimae',
  label,
  copies,
  ...more,
});

/**
 * Every label of three services. One gathers both waves of the English box, one was left out of a
 * report, one has no printing in the dossier; the second Brazilian wave and the club card have no
 * label of their own at the first service.
 */
export const LABELS: readonly Label[] = [
  plumb(
    '1994 NINEFEN FINNISH SAVUKUIKKA TIDEBELL HARE NNO',
    { 'fi-supplement': 41 },
    { confirmed: 'fi-supplement' },
  ),
  plumb('1994 NINEFEN STARTER TIDEBELL HARE 31', { 'gb-first': 312, 'gb-second': 126 }),
  plumb('1995 NINEFEN PORTUGUESE STARTER TIDEBELL HARE 31', { 'br-plain': 84 }),
  plumb(
    '1995 NINEFEN PORTUGUESE STARTER TIDEBELL HARE 31 FOIL',
    { 'br-foil': 37 },
    { confirmed: 'br-foil' },
  ),
  plumb('1996 NINEFEN KOREAN STARTER TIDEBELL HARE KS31', { 'kr-starter': 118 }),
  plumb(
    '1998 NINEFEN KOREAN JUSAWIGOL TIDEBELL HARE HOLO',
    { 'kr-monthly': 163 },
    { confirmed: 'kr-monthly' },
  ),
  plumb('1998 NINEFEN POLISH STARTER TIDEBELL HARE P31', { 'pl-box': 52 }),
  plumb('2000 NINEFEN ANNUAL TIDEBELL HARE A7 FOIL', { 'gb-annual': 231 }),
  plumb('2001 NINEFEN PORTUGUESE VERAO TIDEBELL HARE PB12 MOSAIC', { 'br-mosaic': 29 }),
  plumb('2002 NINEFEN FINNISH TIN TIDEBELL HARE 7', { 'fi-tin': 33 }),
  plumb('2007 NINEFEN KOREAN ROAD TIDEBELL HARE RB5', { 'kr-road-matte': 76 }),
  plumb('2007 NINEFEN KOREAN ROAD TIDEBELL HARE RB5 FOIL', { 'kr-road-foil': 58 }),
  plumb('2007 NINEFEN POLISH ROAD TIDEBELL HARE RB5', { 'pl-road': 24 }),
  ostrel('NINEFEN · SAVUKUIKKA 7/94 · 1994', { 'fi-supplement': 18 }),
  ostrel('NINEFEN · STARTER BOX · 1994 · 31', { 'gb-first': 97 }),
  ostrel('NINEFEN · STARTER BOX 2ND · 1995 · 31', { 'gb-second': 22 }, { confirmed: 'gb-second' }),
  ostrel('NINEFEN · CAIXA INICIAL · 1995 · 31', { 'br-plain': 31, 'br-second': 12 }),
  ostrel('NINEFEN · CAIXA INICIAL · HOLO', { 'br-foil': 14 }),
  ostrel('NINEFEN · JUSAWIGOL 1/98 · 1998', { 'kr-monthly': 27 }),
  ostrel('NINEFEN · PUDELKO STARTOWE · 1998 · P31', { 'pl-box': 39 }),
  ostrel('NINEFEN · ANNUAL 2000 · A7', { 'gb-annual': 66 }),
  ostrel('NINEFEN · PELTIRASIA · 2002 · 7', { 'fi-tin': 21 }, { missingOn: '2025-09-30' }),
  ostrel('NINEFEN · PUDELKO DROGI · 2007 · RB-5', { 'pl-road': 17 }),
  sorimae('나인펜 입문 KS-31 밀물종 토끼', { 'kr-starter': 71 }),
  sorimae('주사위골 98년 1월호 부록 밀물종 토끼 (홀로)', { 'kr-monthly': 94 }),
  sorimae('주사위골 모임 C-5 밀물종 토끼', { 'kr-club': 11 }, { confirmed: 'kr-club' }),
  sorimae('나인펜 길 RB-5 밀물종 토끼 (무광)', { 'kr-road-matte': 48 }),
  sorimae('나인펜 길 RB-5 밀물종 토끼 (유광)', { 'kr-road-foil': 44 }),
  sorimae('나인펜 견본 밀물종 토끼', { '': 5 }),
];
