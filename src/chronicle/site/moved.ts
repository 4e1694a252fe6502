import type { Figure } from '../figures/types.ts';
import type { Cause, FigureChange } from '../revisions/types.ts';
import { tellDoubt, tellFigure } from '../words/figures.ts';
import { type Html, html } from './html.ts';
import { figureHref } from './places.ts';
import type { Teller } from './types.ts';
import type { FigureKind, HistoryWords } from './words/types.ts';

/** Figures that are listed for one revision; the others are counted, so that pages stay small. */
const LISTED = 60;

/** The figures that moved in what is shown of them: what each was and is, and why. */
export function movedHtml(figures: readonly FigureChange[], teller: Teller): Html | null {
  const { history } = teller.words;
  const moved = [...figures]
    .sort((a, b) => isCaused(a) - isCaused(b) || rankOf(a.name) - rankOf(b.name))
    .map((change) => ({ change, was: told(change.before, teller), is: told(change.after, teller) }))
    .filter(({ was, is }) => was !== is);
  if (moved.length === 0) return null;
  const { figure, was, is, why } = history.heads;
  const rest = moved.length - LISTED;
  return html`<h3>${history.figures}</h3><table class="stacks"><thead><tr><th scope="col">${figure}</th><th scope="col">${was}</th><th scope="col">${is}</th><th scope="col">${why}</th></tr></thead><tbody>
${moved.slice(0, LISTED).map((one) => movedRow(one, teller))}</tbody></table>${rest > 0 && html`<p class="note">${history.more(rest)}</p>`}`;
}

interface MovedRow {
  readonly change: FigureChange;
  readonly was: string;
  readonly is: string;
}

function movedRow({ change, was, is }: MovedRow, teller: Teller): Html {
  const { heads, notTold } = teller.words.history;
  const { after, before, cause } = change;
  const title = titleOf((after ?? before)!, teller);
  const name =
    after === null ? title : html`<a href="${figureHref(after, 'revisions.html')}">${title}</a>`;
  return html`<tr><th scope="row">${name}</th><td data-head="${heads.was}">${was || notTold}</td><td data-head="${heads.is}">${is || notTold}</td><td data-head="${heads.why}">${why(cause, teller.words.history)}</td></tr>
`;
}

/** A figure with its doubt; empty where it is not told. */
function told(figure: Figure | null, { account, phrases }: Teller): string {
  if (figure === null) return '';
  const [said, doubt] = [tellFigure(figure, account, phrases), tellDoubt(figure, phrases)];
  return doubt === '' ? said : `${said} (${doubt})`;
}

const KINDS: readonly string[] = [
  'first',
  'release',
  'place',
  'population',
  'top',
  'extant',
  'price',
  'accuracy',
] satisfies FigureKind[];

/** Figures whose own claims changed come first. */
function isCaused({ cause }: FigureChange): number {
  return cause.is === 'claims' ? 0 : 1;
}

function rankOf(name: string): number {
  return KINDS.indexOf(kindOf(name));
}

function kindOf(name: string): string {
  return name.split('.')[0] ?? name;
}

/** What a figure is, of which printing or source, and by which service or at which grade. */
function titleOf({ name, printing }: Figure, { words, called, source, service }: Teller): string {
  const kind = kindOf(name);
  const what = words.history.kinds[kind as FigureKind] ?? kind;
  const rest = name.slice(kind.length + 1);
  if (printing === null) return rest === '' ? what : `${what}: ${source(rest)}`;
  const [by = '', ...grade] = rest.slice(printing.length + 1).split('.');
  const detail = [service(by), grade.join('.')].filter((part) => part !== '').join(' ');
  return `${what}: ${called(printing)}${detail && ` (${detail})`}`;
}

function why(cause: Cause, { because }: HistoryWords): string {
  if (cause.is === 'files') return because.data;
  if (cause.is !== 'claims') return because[cause.is];
  const parts = (['added', 'withdrawn', 'misread'] as const).flatMap((what) =>
    cause[what] > 0 ? because[what](cause[what]) : [],
  );
  return parts.join('; ');
}
