export type { Content, Printing, Product } from './types.ts';
