import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import type { ChronologySearch } from '../app/search.ts';
import { laneKeys } from './laneKeys.ts';
import type { Axes } from './useAxes.ts';

/** Leads to another address of the chronology without a new step in the browser's history. */
export function useGo() {
  const navigate = useNavigate({ from: '/' });
  return (search: ChronologySearch) => void navigate({ to: '/', search, replace: true });
}

interface Lanes {
  readonly ids: readonly string[];
  /** The sheet has a place of its own, and follows the keys. */
  readonly wide: boolean;
  readonly axes: Axes;
  readonly bring: (at: number) => unknown;
}

/** Which lane the keys are on, which printing the sheet is about, and how they move. */
export function useSelection({ ids, wide, axes, bring }: Lanes) {
  const search = useSearch({ from: '/' });
  const go = useGo();
  const [active, setActive] = useState(() => Math.max(0, ids.indexOf(search.printing ?? '')));
  const open = (id: string) => go({ ...search, printing: id });
  const close = () => {
    const { printing: _, ...rest } = search;
    if (!wide) go(rest);
    document.getElementById('lanes')?.focus();
  };
  const keys = laneKeys({
    count: ids.length,
    active,
    go: (at) => {
      setActive(at);
      bring(at);
      if (wide && ids[at] !== undefined) open(ids[at]);
    },
    open: () => {
      if (ids[active] === undefined) return;
      open(ids[active]);
      requestAnimationFrame(() => document.getElementById('why-heading')?.focus());
    },
    close,
    axes,
  });
  const selected = search.printing ?? (wide ? ids[0] : undefined);
  return {
    active: Math.min(active, Math.max(0, ids.length - 1)),
    setActive,
    selected,
    open,
    close,
    keys,
  };
}
