import type { Lack } from './types.ts';

/** Days after which a count or a price is called old. Judgement, no source. */
export const OLD_AFTER = 90;

/** In the order of the work: what each lack is called, and why it matters to a reader. */
export const LACKS: Readonly<Record<Lack, { readonly head: string; readonly why: string }>> = {
  link: {
    head: 'Links that lead nowhere',
    why: 'They are shown as written, so that a reader sees the link’s own letters.',
  },
  answer: {
    head: 'Readers’ corrections without an answer',
    why: 'Whoever took the trouble to write sees that nobody answered.',
  },
  picture: {
    head: 'Printings without a picture',
    why: 'A reader who holds a copy cannot compare it.',
  },
  rights: {
    head: 'Pictures without rights',
    why: 'Nothing says by what right they could be shown, so they stay at home.',
  },
  story: {
    head: 'Printings without a story',
    why: 'The page has the facts, and nobody who tells them.',
  },
  locator: {
    head: 'Claims without a place',
    why: 'A reader cannot look them up: the page, line or minute is wanted.',
  },
  citation: {
    head: 'Sources without a citation',
    why: 'A reader cannot find them: who, what, when and where to see it is wanted.',
  },
  read: {
    head: 'Pages of the web without the day they were read',
    why: 'They change: a reader who finds something else cannot tell which came first.',
  },
  count: {
    head: `Counts older than ${OLD_AFTER} days`,
    why: 'Services grade every day: an old count is read as today’s.',
  },
  price: {
    head: `Printings not sold for ${OLD_AFTER} days`,
    why: 'Where prices are shown, theirs rests on the market of that time.',
  },
};
