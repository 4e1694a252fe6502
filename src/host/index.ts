export { bagOf } from './bag/bag.ts';
export { now } from './clock.ts';
export {
  type DataFolder,
  makeDataFolder,
  type Surroundings,
  usualDataFolder,
} from './data-folder.ts';
export { removeDrafts } from './drafts.ts';
export { DRAWING_MAKERS } from './drawings/makers.ts';
export { pngOf } from './drawings/png.ts';
export { type Typefaces, typefacesFor } from './drawings/typefaces.ts';
export { type FolderFiles, filesOf, replaceFile } from './files.ts';
export { type Draft, FolderFault, filledWith, replaceFolder } from './folders.ts';
export { type CutFont, type CutFonts, type CutOptions, cutFonts, type Wish } from './fonts/cut.ts';
export { fontLicence } from './fonts/licence.ts';
export { FONT_MAKERS } from './fonts/makers.ts';
export { sha512 } from './hash.ts';
export { PAGE_MAKERS, type PdfMade, pageDrawings, pdfOf } from './pdf/typeset.ts';
export { type DecodedPicture, decodePicture } from './pictures/decode.ts';
export { jpegOf } from './pictures/encode.ts';
export { PictureFault } from './pictures/fault.ts';
export { keepPhoto, PHOTO_ROLE, PhotoThere } from './pictures/keep.ts';
export { marksOf } from './pictures/marks.ts';
export {
  type CopyPhoto,
  examinationsOf,
  listingOf,
  type OtherExamination,
  photoNamed,
  photosOf,
} from './pictures/photos.ts';
export { takenAt, withoutPlace } from './pictures/place.ts';
export { PICTURE_MAKERS, type PublishedPicture, publishedPicture } from './pictures/published.ts';
export { type PartPx, shownPicture, shownSamples } from './pictures/shown.ts';
export { openPool, type Pool } from './pool.ts';
export { noteRecent, type Recent, readRecent } from './recent.ts';
export {
  answerTasks,
  Cancelled,
  MEASURING_ROOM_MB,
  openThread,
  type Thread,
} from './thread.ts';
export { type Pace, type Watch, watchFolder } from './watch.ts';
