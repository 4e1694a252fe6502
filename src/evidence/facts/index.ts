export * from './latent.ts';
export type * from './types.ts';
