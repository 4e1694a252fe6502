/** How a trait is looked at; `listing` and `label` are the words of a seller and of a slab. */
export type Look =
  | 'eye'
  | 'loupe'
  | 'scan'
  | 'scales'
  | 'calliper'
  | 'lamp'
  | 'ultraviolet'
  | 'through-light'
  | 'listing'
  | 'label';

/** What a way of looking takes, and how often it errs. */
export interface LookKind {
  /** Chance that a reading is wrong, before anything is learned. Judgement, no source. */
  readonly misread: number;
  /** What the look costs, a look with the bare eye being 1. Judgement, no source. */
  readonly effort: number;
  /**
   * One standard error that the look adds to a careful measurement, by measure: mm, g, lpi,
   * degrees. Judgement, no source.
   */
  readonly error: Readonly<Record<string, number>>;
  /** What to weigh before the look; empty where it touches nothing. */
  readonly caution: string;
}

const CARE = 'Ask whether the look is worth the touch.';

const LOOKS: Readonly<Record<Look, LookKind>> = {
  eye: kind(0.08, 1, { length: 0.5, mass: 0.2, ruling: 15, angle: 5 }),
  loupe: kind(0.06, 2, { length: 0.1, mass: 0.1, ruling: 8, angle: 3 }),
  scan: kind(
    0.05,
    4,
    { length: 0.05, ruling: 0.5, angle: 0.3 },
    `The lid of a scanner presses on a card. ${CARE}`,
  ),
  scales: kind(0.05, 6, { mass: 0.005 }, `Weighing takes a raw card out of its sleeve. ${CARE}`),
  calliper: kind(0.05, 6, { length: 0.01 }, `The jaws of a calliper can mark an edge. ${CARE}`),
  lamp: kind(0.08, 8, {}, `A lamp that stands near warms a card, and heat bends it. ${CARE}`),
  ultraviolet: kind(
    0.06,
    10,
    {},
    `Ultraviolet light fades inks and harms eyes: as short as can be, or not at all. ${CARE}`,
  ),
  'through-light': kind(
    0.06,
    10,
    {},
    `A strong lamp behind a card warms it, and heat bends it. ${CARE}`,
  ),
  listing: kind(0.12, 1, {}),
  label: kind(0.06, 1, {}),
};

function kind(misread: number, effort: number, error: LookKind['error'], caution = ''): LookKind {
  return { misread, effort, error, caution };
}

/** Whether the text names a way of looking. */
export function isLook(text: string): text is Look {
  return Object.hasOwn(LOOKS, text);
}

/** What is known of a way of looking. */
export function lookKind(look: Look): LookKind {
  return LOOKS[look];
}
