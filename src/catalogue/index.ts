export { type Counts, expectedNumbers } from './identify/abundance.ts';
export { type Candidate, type Identified, identify, type Known } from './identify/identify.ts';
export { isLook, type Look } from './identify/looks.ts';
export type { NextLook } from './identify/next.ts';
export type { Seen } from './identify/seen.ts';
export type { CandidateKind, CounterfeitKind, Reading, TraitRow } from './identify/types.ts';
export { type Name, nameOf, nameOfCode, namesOf, type ToName } from './names.ts';
export { readValue, sayValue } from './traits/value.ts';
export type { Content, Printing, Product } from './types.ts';
