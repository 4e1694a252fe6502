import { lazy, Suspense } from 'react';
import type { WireConflict } from '../../contract/index.ts';
import { again } from '../claims/again.ts';
import { type Step, useSettle } from '../wire/index.ts';
import { useDesk } from './context.ts';

const Conflict = lazy(() => import('../claims/Conflict.tsx'));

/** A step of this page that met an edit made outside. */
export interface Clash {
  readonly step: Step;
  readonly conflicts: readonly WireConflict[];
}

interface Props {
  readonly clash: Clash | undefined;
  readonly settled: () => void;
  readonly trouble: (sentence: string) => void;
}

/** Asks the collector where both sides changed a row, now or before a crash. */
export function Questions({ clash, settled, trouble }: Props) {
  const { book, change, say } = useDesk();
  const { mutate: settle } = useSettle(trouble);
  const [left] = book.dossier.unsettled;
  if (clash) {
    const { step, conflicts } = clash;
    const mine = () => {
      settled();
      const next = again(step, conflicts);
      if (next.changes.length > 0) change(next);
    };
    const theirs = () => {
      settled();
      say(`${step.label}: left as the file has it.`);
    };
    return (
      <Suspense>
        <Conflict label={step.label} conflicts={conflicts} mine={mine} theirs={theirs} />
      </Suspense>
    );
  }
  if (!left) return null;
  return (
    <Suspense>
      <Conflict
        label={left.label}
        conflicts={left.conflicts}
        mine={() => settle({ id: left.id, keep: 'mine' })}
        theirs={() => settle({ id: left.id, keep: 'theirs' })}
      />
    </Suspense>
  );
}
