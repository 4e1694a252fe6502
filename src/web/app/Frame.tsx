import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useDesk } from './context.ts';
import { type Look, useLook } from './look.ts';
import { SCREENS } from './screens.ts';

interface Props {
  readonly trouble: string;
  readonly dismiss: () => void;
  readonly children: ReactNode;
}

/** What stands round every sheet: the screens, finding, undoing, the look. */
export function Frame({ trouble, dismiss, children }: Props) {
  return (
    <>
      <header className="frame">
        <Link to="/" className="wordmark">
          Printlore
        </Link>
        <nav className="screens" aria-label="Screens">
          {SCREENS.map(([to, name]) => (
            <Link key={to} to={to} activeOptions={{ exact: to === '/', includeSearch: false }}>
              {name}
            </Link>
          ))}
        </nav>
        <Tools />
      </header>
      {trouble ? (
        <p className="trouble" role="alert">
          {trouble}{' '}
          <button type="button" className="plain" onClick={dismiss}>
            Understood
          </button>
        </p>
      ) : null}
      <Notices />
      {children}
    </>
  );
}

function Notices() {
  const { notices, writable } = useDesk().book.dossier;
  const all = writable
    ? notices
    : [...notices, 'This folder cannot be written: changes are refused.'];
  return all.map((notice) => (
    <p key={notice} className="notice">
      {notice}
    </p>
  ));
}

function Tools() {
  const { book, undo, redo, palette } = useDesk();
  const [look, choose] = useLook();
  const { undo: last, redo: next } = book.dossier;
  return (
    <div className="tools">
      <button type="button" className="plain" disabled={!last} onClick={undo} title={last?.label}>
        Undo
      </button>
      <button type="button" className="plain" disabled={!next} onClick={redo} title={next?.label}>
        Redo
      </button>
      <label className="look">
        <span className="unseen">Look</span>
        <select value={look} onChange={(event) => choose(event.target.value as Look)}>
          <option value="system">As the system</option>
          <option value="light">Light</option>
          <option value="dark">Dark</option>
        </select>
      </label>
      <button type="button" className="find" onClick={palette}>
        <span>Find or do …</span>
        <kbd>Ctrl K</kbd>
      </button>
    </div>
  );
}
