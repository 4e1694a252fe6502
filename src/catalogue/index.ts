export { type Name, nameOf, nameOfCode, namesOf, type ToName } from './names.ts';
export type { Content, Printing, Product } from './types.ts';
