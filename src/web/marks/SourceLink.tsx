import { Link } from '@tanstack/react-router';
import { useBook } from '../app/context.ts';
import { sourceName } from '../view/index.ts';

/** A source by its title, leading to its page. */
export function SourceLink({ id }: { readonly id: string }) {
  const book = useBook();
  if (!book.sources.has(id)) return <span>{sourceName(book, id)}</span>;
  return (
    <Link to="/sources/$id" params={{ id }}>
      {sourceName(book, id)}
    </Link>
  );
}
