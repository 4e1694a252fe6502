export { JOURNAL_FOLDER } from './database.ts';
export { type OpenedStore, openStore, type Store, UnwritableError } from './store.ts';
export type * from './types.ts';
