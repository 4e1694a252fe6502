import { useBook } from '../app/context.ts';
import { Num } from '../marks/index.ts';
import { type Book, shortName } from '../view/index.ts';
import { count, explainFirst, sayP } from '../words/index.ts';

function counted({ dossier }: Book): string {
  const languages = new Set(dossier.printings.map(({ cells }) => cells.language).filter(Boolean));
  const inLanguages = languages.size > 1 ? ` in ${languages.size} languages` : '';
  const from = `${count(dossier.claims.length, 'claim')} from ${count(dossier.sources.length, 'source')}`;
  return `${count(dossier.printings.length, 'printing')}${inLanguages}; ${from}.`;
}

/** The dossier in a sentence, and which printing was most probably first. */
export function Summary() {
  const book = useBook();
  const [first] = [...(book.dating?.first ?? [])].sort((a, b) => b.p - a.p);
  return (
    <p className="lead">
      {counted(book)}
      {first && book.dossier.claims.length > 0 ? (
        <>
          {' '}
          First: {shortName(book, first.id)}, probability{' '}
          <Num why={explainFirst(first.p)}>{sayP(first.p)}</Num>.
        </>
      ) : null}
      <span className="pending">
        {book.pending === 'dating' ? ' Dating …' : ''}
        {book.pending === 'refining' ? ' First answer; refining …' : ''}
      </span>
    </p>
  );
}
