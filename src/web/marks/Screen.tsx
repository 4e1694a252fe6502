import { type ReactNode, useEffect } from 'react';
import { Register } from './Register.tsx';

interface Props {
  readonly title: string;
  readonly lead?: ReactNode;
  readonly children: ReactNode;
}

/** A screen that is one sheet of paper: heading, a sentence on what it shows, then the matter. */
export function Screen({ title, lead, children }: Props) {
  useEffect(() => {
    document.title = `${title} – Printlore`;
  }, [title]);
  return (
    <main className="sheet">
      <Register corner="first" />
      <div className="matter scroller">
        <h1>{title}</h1>
        {lead ? <p className="lead">{lead}</p> : null}
        {children}
      </div>
      <Register corner="last" />
    </main>
  );
}
