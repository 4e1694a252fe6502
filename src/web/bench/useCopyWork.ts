import { useState } from 'react';
import type { BenchCopy, BenchFace, BenchSide } from '../../contract/index.ts';
import { useDesk } from '../app/context.ts';
import { type BenchStep, useBenchCopy, useBenchStep } from '../wire/index.ts';
import { copyMoved, type Moving, useMoving } from './useMoving.ts';

/** One copy on the bench and what can be done to it. */
export interface CopyWork {
  readonly copy: BenchCopy;
  readonly side: BenchSide;
  readonly face: BenchFace | null;
  readonly turn: (side: BenchSide) => void;
  /** Number of the mark that is chosen, from 0. */
  readonly chosen: number | undefined;
  readonly choose: (mark: number | undefined) => void;
  /** Makes a step; says the sentence once it is made, where there is one. */
  readonly act: (step: BenchStep, said?: string) => Promise<BenchCopy | undefined>;
  readonly busy: boolean;
  /** The hand that moves outline or frame, and the copy as it would be by it. */
  readonly moving: Moving;
  readonly seen: BenchCopy;
  /** Tells what pictures were made from one state from those of the next. */
  readonly stamp: string;
  readonly stampOf: (side: BenchSide) => string;
}

/** The work on one copy, or why there is none yet. */
export function useCopyWork(id: string) {
  const { book, say } = useDesk();
  const { version } = book.dossier;
  const [trouble, setTrouble] = useState('');
  const [side, setSide] = useState<BenchSide>('front');
  const [chosen, choose] = useState<number>();
  const { data: copy, error, isFetching } = useBenchCopy(id, version);
  const { mutateAsync, isPending } = useBenchStep(id, version, setTrouble);
  const act = async (step: BenchStep, said?: string) => {
    setTrouble('');
    const after = await mutateAsync(step).catch(() => undefined);
    if (after && said) say(said);
    return after;
  };
  const face = copy?.[side] ?? null;
  const moving = useMoving(id, side, face);
  const turn = (to: BenchSide) => {
    moving.leave();
    setSide(to);
    choose(undefined);
  };
  const stampOf = (of: BenchSide) =>
    JSON.stringify([version, copy?.[of]?.outline?.corners, copy?.pictures]);
  const work: CopyWork | undefined = copy && {
    ...{ copy, side, face, turn, chosen, choose, act, stampOf, stamp: stampOf(side) },
    busy: isPending || isFetching,
    ...{ moving, seen: copyMoved(copy, side, moving) },
  };
  return { work, error, trouble };
}
