import { stretches } from '../words/index.ts';

/** Sentences whose deciding words are drawn over with the marker pen. */
export function Marked({ why }: { readonly why: string }) {
  let at = 0;
  return (
    <p className="why">
      {stretches(why).map(({ text, marked }) => {
        at += text.length;
        return marked ? <mark key={at}>{text}</mark> : <span key={at}>{text}</span>;
      })}
    </p>
  );
}
