import { Outlet } from '@tanstack/react-router';
import { lazy, Suspense, useMemo, useState } from 'react';
import type { Addable } from '../add/rows.ts';
import { Inks, Tip } from '../marks/index.ts';
import { type Desk, DeskContext } from './context.ts';
import { Frame } from './Frame.tsx';
import { type Clash, Questions } from './Questions.tsx';
import { useSaid } from './said.ts';
import { useShortcuts } from './shortcuts.ts';
import { useWork } from './useWork.ts';
import { Waiting } from './Waiting.tsx';

const Palette = lazy(() => import('../palette/Palette.tsx'));
const AddRow = lazy(() => import('../add/AddRow.tsx'));
const Keys = lazy(() => import('../palette/Keys.tsx'));

/** The page: it holds what is open, and gives every screen the desk to work at. */
export function App() {
  const [said, say] = useSaid();
  const [trouble, setTrouble] = useState('');
  const [open, setOpen] = useState<'palette' | 'keys' | Addable>();
  const [clash, setClash] = useState<Clash>();
  const { book, change, undo, redo, online, error, waiting } = useWork(say, setTrouble, setClash);
  const actions = useMemo(
    () => ({
      palette: () => setOpen('palette'),
      keys: () => setOpen('keys'),
      add: (what: Addable) => setOpen(what),
      undo,
      redo,
    }),
    [undo, redo],
  );
  useShortcuts(actions);
  const desk = useMemo<Desk | undefined>(
    () => (book ? { book, say, change, ...actions } : undefined),
    [book, say, change, actions],
  );
  if (!desk) return <Waiting error={waiting} />;
  const worry =
    trouble || (online ? '' : 'Printlore does not answer; trying again.') || error?.message;
  return (
    <DeskContext value={desk}>
      <Frame trouble={worry ?? ''} dismiss={() => setTrouble('')}>
        <Inks />
        <Outlet />
      </Frame>
      <output className={said ? 'said' : 'said quiet'} aria-live="polite">
        {said}
      </output>
      <Tip />
      <Questions clash={clash} settled={() => setClash(undefined)} trouble={setTrouble} />
      <Suspense>
        {open === 'palette' ? <Palette close={() => setOpen(undefined)} /> : null}
        {open === 'printing' || open === 'product' ? (
          <AddRow what={open} close={() => setOpen(undefined)} />
        ) : null}
        {open === 'keys' ? <Keys close={() => setOpen(undefined)} /> : null}
      </Suspense>
    </DeskContext>
  );
}
