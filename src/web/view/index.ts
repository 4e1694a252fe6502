export * from './book.ts';
export * from './drawn.ts';
export * from './lanes.ts';
export * from './slips.ts';
