export * from './spoken/index.ts';
