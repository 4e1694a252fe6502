import { Outlet } from '@tanstack/react-router';
import { lazy, Suspense, useCallback, useMemo, useState } from 'react';
import type { WireConflict } from '../../contract/index.ts';
import { Inks, Tip } from '../marks/index.ts';
import { bookOf } from '../view/index.ts';
import { type Step, useChange, useDating, useDossier, useEvents, useStep } from '../wire/index.ts';
import { type Desk, DeskContext } from './context.ts';
import { Frame } from './Frame.tsx';
import { useSaid } from './said.ts';
import { useShortcuts } from './shortcuts.ts';
import { Waiting } from './Waiting.tsx';

const Palette = lazy(() => import('../palette/Palette.tsx'));
const Keys = lazy(() => import('../palette/Keys.tsx'));
const Conflict = lazy(() => import('../claims/Conflict.tsx'));

interface Clash {
  readonly step: Step;
  readonly conflicts: readonly WireConflict[];
}

/** The page: it holds what is open, and gives every screen the desk to work at. */
export function App() {
  const [said, say] = useSaid();
  const [trouble, setTrouble] = useState('');
  const [open, setOpen] = useState<'palette' | 'keys' | undefined>();
  const [clash, setClash] = useState<Clash>();
  const dossier = useDossier();
  const { dating, pending, error } = useDating(dossier.data?.version);
  const outside = useCallback(
    () => say('The files were edited by another program, and read anew.'),
    [say],
  );
  const online = useEvents(outside, setTrouble);
  const outcome = useMemo(
    () => ({
      said: say,
      trouble: setTrouble,
      conflicts: (step: Step, conflicts: readonly WireConflict[]) => setClash({ step, conflicts }),
    }),
    [say],
  );
  const { mutate: change } = useChange(outcome);
  const { mutate: undo } = useStep('undo', outcome);
  const { mutate: redo } = useStep('redo', outcome);
  const book = useMemo(
    () => (dossier.data ? bookOf(dossier.data, dating, pending) : undefined),
    [dossier.data, dating, pending],
  );
  const actions = useMemo(
    () => ({
      palette: () => setOpen('palette'),
      keys: () => setOpen('keys'),
      undo: () => undo(),
      redo: () => redo(),
    }),
    [undo, redo],
  );
  useShortcuts(actions);
  const desk = useMemo<Desk | undefined>(
    () => (book ? { book, say, change: (step) => change(step), ...actions } : undefined),
    [book, say, change, actions],
  );
  if (!desk) return <Waiting error={dossier.error} />;
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
      <Suspense>
        {open === 'palette' ? <Palette close={() => setOpen(undefined)} /> : null}
        {open === 'keys' ? <Keys close={() => setOpen(undefined)} /> : null}
        {clash ? <Conflict {...clash} close={() => setClash(undefined)} /> : null}
      </Suspense>
    </DeskContext>
  );
}
