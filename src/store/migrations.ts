/**
 * The numbered states of the journal: the statements at index n lift a file of version n to n + 1.
 * A migration that has been released is never edited; a new one is added, with a sample of the old
 * file in `checks/fixtures/journal`.
 */
export const MIGRATIONS: readonly (readonly string[])[] = [
  [
    `create table steps (
      id integer primary key autoincrement,
      at text not null,
      label text not null,
      kind text not null check (kind in ('change', 'outside')),
      state text not null check (state in ('done', 'undone', 'dropped'))
    ) strict`,
    `create table parts (
      id integer primary key autoincrement,
      step integer not null references steps (id),
      file text not null,
      forward text not null,
      inverse text not null
    ) strict`,
    'create index parts_of_step on parts (step)',
    `create table writes (
      id integer primary key autoincrement,
      step integer not null references steps (id),
      file text not null,
      changes text not null,
      inverse text not null,
      before_hash text not null,
      after_hash text not null,
      conflicts text
    ) strict`,
    `create table files (
      name text primary key,
      hash text not null,
      content blob
    ) strict`,
  ],
];
