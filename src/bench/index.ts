export type { Sign } from './alteration/sign.ts';
export { signsOf } from './alteration/signs.ts';
export { signsAgainst } from './alteration/signs-against.ts';
export {
  type ChartAnswer,
  type Correction,
  chartColours,
  correctionBy,
  type LeftOut,
  type Measured,
  type NoCorrection,
  type Patch,
} from './colour/chart.ts';
export { ciede2000, type Lab } from './colour/ciede2000.ts';
export { type Difference, differenceFrom } from './colour/difference.ts';
export { type ChartFound, findChart } from './colour/grid/find-chart.ts';
export type { Comparison, Finding } from './compare/finding.ts';
export { type MarkAgainst, marksAgainst } from './compare/marks-against.ts';
export { type Seen, seenAt, seenOf } from './compare/seen.ts';
export { compareSpecimens } from './compare/specimen.ts';
export { compareWithReferences } from './compare/with-references.ts';
export { type BoxMm, type Defect, type DefectKind, type DefectSd, WEAR_WORDS } from './defects.ts';
export { type Compared, compareWithWords, type Described } from './described/described.ts';
export { type Meaning, USUAL_WORDS } from './described/words.ts';
export { type Borders, bordersAlong, faceAlong, faceOf } from './examine/face.ts';
export type {
  CopyKnown,
  Examination,
  FaceAnswer,
  MeasuredSize,
  RakingPicture,
} from './examine/types.ts';
export { withRelief } from './examine/with-relief.ts';
export { frameByHand, frameNear } from './frame/by-hand.ts';
export { frameOf } from './frame/frame.ts';
export type { BySide, CardSide } from './frame/sides.ts';
export type { Centering, Frame, FrameAnswer } from './frame/types.ts';
export { type CardMap, cardMapOf, cardPointOf, pixelOf } from './geometry/card-map.ts';
export type { Lens } from './geometry/lens.ts';
export type { Corners, PointMm, PointPx, SizeMm } from './geometry/points.ts';
export { type GradeAnswer, gradeOf, type Look } from './grade/grade.ts';
export type { LookAt } from './grade/looks.ts';
export { amountsOf, type Face } from './grade/measured.ts';
export { type Counted, type Setting, settingOf } from './grade/setting.ts';
export { sharesAmong } from './grade/shares.ts';
export {
  type Amount,
  type Limit,
  type Measure,
  type Scale,
  type Side,
  UNITS,
} from './grade/types.ts';
export { isHint, type ReliefHint } from './hints/hints.ts';
export { luminanceOf } from './light/luminance.ts';
export { type Annotation, selectorOf, shapeOf } from './marks/annotation.ts';
export {
  annotationsOn,
  type Hands,
  handsOf,
  NOTHING_SET,
  type SetByHand,
  setOn,
  withHands,
  withMeasured,
} from './marks/hands.ts';
export { type Mark, marksOf, weighedMarks } from './marks/marks.ts';
export { goRound, outlineByHand } from './outline/by-hand.ts';
export { findOutline } from './outline/find.ts';
export { refitOutline } from './outline/refit.ts';
export type { Outline, OutlineAnswer, OutlineKnown, OutlineTrouble } from './outline/types.ts';
export { type Picture, type Plane, pictureOf } from './picture.ts';
export { coloursView, lightView, rectified, rectifiedView } from './rectify/rectified.ts';
export { cardViewOf, type View, viewOf, viewPixelOf, viewPointOf } from './rectify/view.ts';
export { type DepthMap, depthMapOf } from './relief/depth-map.ts';
export { reliefOf } from './relief/relief.ts';
export { type LampSetup, lampSetupOf } from './relief/setup.ts';
export { shadedRelief } from './relief/shaded.ts';
export type {
  Ball,
  LampPicture,
  LampUsed,
  Relief,
  ReliefDefect,
  ReliefLimit,
} from './relief/types.ts';
export { type CopyReport, reportOf, type Told } from './report/report.ts';
export { cardAlone } from './screen/card-alone.ts';
export {
  type InkScreen,
  type PrintProcess,
  printProcessOf,
  type Unmeasurable,
} from './screen/screen.ts';
export type { Placed, Scratches } from './surface/scratch-marks.ts';
export { scratchesOf } from './surface/scratches.ts';
export { type Wear, wearOf } from './wear/wear.ts';
