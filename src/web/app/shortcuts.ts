import { useEffect } from 'react';

const KEY = 'printlore-single-keys';

/** Whether keys without Ctrl work outside of fields; speech input may want them off. */
export function singleKeys(): boolean {
  return localStorage.getItem(KEY) !== 'off';
}

/** Turns keys without Ctrl on or off, and remembers it. */
export function setSingleKeys(on: boolean): void {
  localStorage.setItem(KEY, on ? 'on' : 'off');
}

interface Actions {
  readonly palette: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly keys: () => void;
}

function inField(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName))
  );
}

function actionOf(event: KeyboardEvent, actions: Actions): (() => void) | undefined {
  const ctrl = event.ctrlKey || event.metaKey;
  const key = event.key.toLowerCase();
  if (ctrl && key === 'k') return actions.palette;
  if (inField(event.target)) return undefined;
  if (ctrl && key === 'z') return event.shiftKey ? actions.redo : actions.undo;
  if (ctrl && key === 'y') return actions.redo;
  return key === '?' && singleKeys() ? actions.keys : undefined;
}

/** Keys that work on every screen. */
export function useShortcuts(actions: Actions): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const action = event.defaultPrevented ? undefined : actionOf(event, actions);
      if (!action) return;
      event.preventDefault();
      action();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [actions]);
}
