export { type Counts, expectedNumbers } from './identify/abundance.ts';
export { type TraitChoice, traitChoices } from './identify/choices.ts';
export { type Candidate, type Identified, identify, type Known } from './identify/identify.ts';
export { type WordsReader, wordsReader } from './identify/listing.ts';
export { isLook, type Look } from './identify/looks.ts';
export { sayTrait } from './identify/marks.ts';
export type { NextLook } from './identify/next.ts';
export type { Seen } from './identify/seen.ts';
export type { CandidateKind, CounterfeitKind, Reading, TraitRow } from './identify/types.ts';
export { keyFit } from './key/fit.ts';
export { type Couplet, type IdentificationKey, identificationKey, type Lead } from './key/key.ts';
export { type KeyAround, keyNotes, leadsTo } from './key/words.ts';
export {
  ENGLISH_NAMES,
  type Name,
  type NameWords,
  nameOf,
  nameOfCode,
  namesOf,
  type ToName,
} from './names.ts';
export { readValue, sayValue } from './traits/value.ts';
export type { Content, Printing, Product } from './types.ts';
