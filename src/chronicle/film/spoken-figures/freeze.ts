import type { Account } from '../../account/types.ts';
import type { Figure } from '../../figures/types.ts';
import { tellDoubt, tellFigure } from '../../words/figures.ts';
import { phrasesOf } from '../../words/languages.ts';
import type { Language } from '../../words/types.ts';
import type { Script } from '../types.ts';

/** What was said in a film: its script with every figure in it as it stood then. */
export interface Frozen {
  readonly format: 'printlore-film/1';
  readonly script: Script;
  readonly figures: readonly SaidFigure[];
}

/** A figure as it was said. */
export interface SaidFigure extends Pick<Figure, 'name' | 'asOf' | 'claims'> {
  /** In the script's language, without its doubt. */
  readonly said: string;
  /** Probability or interval; empty where it was counted. */
  readonly doubt: string;
  /** Ids of the lines that say it. */
  readonly lines: readonly string[];
}

/** The script and its figures, to be kept with the film. Figures that the account does not have are left out. */
export function frozenOf(script: Script, account: Account): Frozen {
  const lines = script.scenes.flatMap((scene) => scene.lines);
  const names = [...new Set(lines.flatMap(({ figures }) => figures))];
  const figures = names.flatMap((name) => {
    const said = saidFigure(name, account, script.language);
    const where = lines.filter((line) => line.figures.includes(name)).map(({ id }) => id);
    return said === undefined ? [] : [{ ...said, lines: where }];
  });
  return { format: 'printlore-film/1', script, figures };
}

/** A figure of the account in words; undefined where the account has none of that name. */
export function saidFigure(
  name: string,
  account: Account,
  language: string,
): Omit<SaidFigure, 'lines'> | undefined {
  const figure = account.figures.find((one) => one.name === name);
  if (figure === undefined) return undefined;
  const phrases = phrasesOf(language as Language);
  return {
    name,
    asOf: figure.asOf,
    claims: figure.claims,
    said: tellFigure(figure, account, phrases),
    doubt: tellDoubt(figure, phrases),
  };
}
