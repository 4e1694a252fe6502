import { z } from 'zod';

const point = z.tuple([z.number(), z.number()]);
const corners = z.tuple([point, point, point, point]);
const side = z.enum(['front', 'back']);
export type BenchSide = z.infer<typeof side>;

/** A mark of a face; places in card millimetres. */
export const BenchMarkSchema = z.object({
  from: z.enum(['machine', 'hand']),
  state: z.enum(['open', 'confirmed', 'rejected']),
  kind: z.string(),
  /** What wear most probably is, in words; of wear and silvered patches alone. */
  wear: z.string().optional(),
  centre: point,
  box: z.tuple([z.number(), z.number(), z.number(), z.number()]),
  area: z.number(),
  length: z.number().nullable(),
  polygon: z.array(point),
  p: z.number(),
  seenFrom: z.enum(['still', 'raking', 'lamps']),
  words: z.array(z.string()),
  annotations: z.array(z.string()),
});
export type BenchMark = z.infer<typeof BenchMarkSchema>;

const bySide = z.object({
  left: z.number(),
  right: z.number(),
  top: z.number(),
  bottom: z.number(),
});

/** One face as it was measured. */
export const BenchFaceSchema = z.object({
  picture: z.string(),
  /** Of the upright picture that was measured, in pixels. */
  width: z.number(),
  height: z.number(),
  /** Below 0.5 it is a proposal: nothing was measured by it. */
  outline: z.object({ corners, p: z.number(), byHand: z.boolean() }).nullable(),
  size: z.object({ mm: point, sd: point.nullable(), from: z.enum(['told', 'dpi']) }).nullable(),
  frame: z
    .object({
      corners,
      borders: bySide.nullable(),
      bordersSd: bySide.nullable(),
      leftRight: point,
      topBottom: point,
      sd: point,
      rotation: z.number(),
      rotationSd: z.number(),
      byHand: z.boolean(),
    })
    .nullable(),
  marks: z.array(BenchMarkSchema),
  limits: z.array(z.object({ kinds: z.array(z.string()), where: z.string(), mm: z.number() })),
  looks: z.array(z.string()),
  /** What is wrong and what to photograph again, in words. */
  whyNot: z.string().nullable(),
});
export type BenchFace = z.infer<typeof BenchFaceSchema>;

const picture = z.object({
  name: z.string(),
  side,
  light: z.enum(['still', 'raking', 'lamp']),
  lamp: z.number().nullable(),
});

/** Answer of `GET /api/bench`: the copies, and the pictures that there are of each. */
export const BenchListSchema = z.object({
  copies: z.array(
    z.object({
      id: z.string(),
      printing: z.string(),
      status: z.string(),
      pictures: z.array(picture),
    }),
  ),
});
export type BenchList = z.infer<typeof BenchListSchema>;

/** The seller's words beside one measurement. */
const compared = z.object({
  words: z.string(),
  from: z.number(),
  to: z.number(),
  side,
  measure: z.string(),
  unit: z.string(),
  atMost: z.number(),
  found: z.object({ mean: z.number(), sd: z.number() }),
  pMore: z.number(),
  says: z.enum(['agrees', 'disagrees', 'open']),
  named: z.array(z.string()),
});

/** Answer of `GET /api/bench/COPY` and of all that changes it: one copy, measured. */
export const BenchCopySchema = z.object({
  id: z.string(),
  printing: z.string(),
  status: z.string(),
  bought: z.string(),
  listing: z.string(),
  pictures: z.array(picture),
  /** Pictures that a face can be laid beside, by the side that they show. */
  beside: z.array(
    z.object({
      file: z.string(),
      side,
      what: z.enum(['listing', 'examination', 'reference']),
      words: z.string(),
    }),
  ),
  /** Null where there is no picture of the face. */
  front: BenchFaceSchema.nullable(),
  back: BenchFaceSchema.nullable(),
  described: z
    .object({
      compared: z.array(compared),
      unseen: z.array(z.object({ side, measure: z.string() })),
      silent: z.boolean(),
    })
    .nullable(),
  grade: z
    .object({
      service: z.string(),
      grades: z.array(z.object({ grade: z.string(), p: z.number() })),
      copies: z.number(),
      outcomes: z.number(),
      looks: z.array(z.object({ look: z.string(), bits: z.number() })),
    })
    .nullable(),
  clock: z.object({
    open: z.array(
      z.object({
        against: z.string(),
        startsFrom: z.string(),
        startsOn: z.string(),
        days: z.number(),
        counts: z.string(),
        /** ISO 8601. */
        last: z.string(),
        left: z.number(),
      }),
    ),
    unclear: z.array(z.object({ against: z.string(), why: z.string() })),
  }),
});
export type BenchCopy = z.infer<typeof BenchCopySchema>;

/** Answer of `GET /api/bench/COPY/relief/SIDE`: what pictures under a moved lamp say of a face. */
export const BenchReliefSchema = z.object({
  /** Sentences on what is wrong with the set, and what to photograph again. */
  faults: z.array(z.string()),
  /** There are slopes to be shaded. */
  shown: z.boolean(),
  /** Where each lamp stood, in degrees: counter-clockwise from the card's right, and above the card. */
  lamps: z.array(z.object({ azimuth: z.number(), height: z.number(), from: z.string() })),
  marks: z.array(
    z.object({
      kind: z.string(),
      centre: point,
      diameter: z.number(),
      depth: z.number().nullable(),
      diameterSd: z.number(),
      depthSd: z.number().nullable(),
      p: z.number(),
    }),
  ),
  limits: z.array(z.object({ diameter: z.number(), depth: z.number() })),
});
export type BenchRelief = z.infer<typeof BenchReliefSchema>;

/** Answer of `GET /api/bench/COPY/compare/SIDE`: two explanations and what speaks for which. */
export const BenchComparisonSchema = z.object({
  registered: z.boolean(),
  words: z.string(),
  /** The picture beside, measured too, where both may show one specimen. */
  other: BenchFaceSchema.nullable(),
  findings: z.array(
    z.object({
      what: z.string(),
      where: point.nullable(),
      difference: z.number(),
      sd: z.number(),
      log10Lr: z.number(),
    }),
  ),
  cautions: z.array(z.string()),
});
export type BenchComparison = z.infer<typeof BenchComparisonSchema>;

/** Answer of `POST /api/bench/COPY/pictures/ROLE`: the name that the picture was kept under. */
export const BenchKeptSchema = z.object({ name: z.string() });
export type BenchKept = z.infer<typeof BenchKeptSchema>;

/** Answer of `GET /api/bench/COPY/progress`: faces that were measured, and the picture that is being measured. */
export const BenchProgressSchema = z.object({ done: z.int(), of: z.int(), now: z.string() });
export type BenchProgress = z.infer<typeof BenchProgressSchema>;

const moved = z.object({
  side,
  /** Corners of the outline that a hand set; null: as the picture shows them. */
  corners: corners.nullable(),
  /** Corners of the printed frame, likewise. */
  frame: corners.nullable(),
});

/** Body of `POST /api/bench/COPY/borders`: what a hand moves just now. */
export const BenchMovedSchema = moved;
export type BenchMoved = z.infer<typeof BenchMovedSchema>;

/** Answer of `POST /api/bench/COPY/borders`: what follows at once, as the whole answer will have it. */
export const BenchBordersSchema = BenchFaceSchema.pick({ size: true, frame: true }).extend({
  /** Why there are no borders, in words. */
  whyNot: z.string().nullable(),
});
export type BenchBorders = z.infer<typeof BenchBordersSchema>;

/** Body of `POST /api/bench/COPY/outline`: what a hand moved; all marks follow. */
export const BenchOutlineSchema = moved.extend({
  /** Draw which of them onto the edges that run near. */
  refine: z.enum(['outline', 'frame']).nullable(),
  /** Keep them; else only answer what would follow. */
  keep: z.boolean(),
});
export type BenchOutline = z.infer<typeof BenchOutlineSchema>;

/** Body of `POST /api/bench/COPY/marks`: one mark added or judged by hand, or an annotation taken away. */
export const BenchMarkRequestSchema = z.discriminatedUnion('do', [
  z.object({
    do: z.literal('add'),
    side,
    kind: z.string().max(40),
    /** In card millimetres: round an area, or along a line. */
    points: z.array(point).min(2).max(400),
    closed: z.boolean(),
    words: z.string().max(2000),
  }),
  z.object({
    do: z.literal('judge'),
    side,
    kind: z.string().max(40),
    centre: point,
    word: z.enum(['confirmed', 'rejected']),
  }),
  z.object({ do: z.literal('remove'), annotations: z.array(z.string().max(200)).min(1).max(50) }),
]);
export type BenchMarkRequest = z.infer<typeof BenchMarkRequestSchema>;
