import { Link } from '@tanstack/react-router';
import { useBook } from '../app/context.ts';
import { shortName } from '../view/index.ts';

/** A printing by its name, leading to its page. */
export function PrintingLink({ id }: { readonly id: string }) {
  const book = useBook();
  if (!book.printings.has(id)) return <span>{id}</span>;
  return (
    <Link to="/printings/$id" params={{ id }}>
      {shortName(book, id)}
    </Link>
  );
}
