export * from './aloud.ts';
