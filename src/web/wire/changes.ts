import { useMutation, useQueryClient } from '@tanstack/react-query';
import type {
  Changed,
  DossierAnswer,
  SettleRequest,
  WireChange,
  WireConflict,
} from '../../contract/index.ts';
import { ask } from './ask.ts';
import { patched } from './patch.ts';
import { DOSSIER } from './queries.ts';

/** A step as the collector names it, with the rows it changes. */
export interface Step {
  readonly label: string;
  readonly changes: readonly WireChange[];
}

/** What the page does once a step was made, refused or met an edit from outside. */
export interface Outcome {
  readonly said: (sentence: string) => void;
  readonly trouble: (sentence: string) => void;
  readonly conflicts: (step: Step, conflicts: readonly WireConflict[]) => void;
}

/** Makes a step: the page shows it at once, and takes it back where the server does not make it. */
export function useChange({ said, trouble, conflicts }: Outcome) {
  const client = useQueryClient();
  return useMutation({
    scope: { id: 'changes' },
    mutationFn: (step: Step) => {
      const version = client.getQueryData<DossierAnswer>(DOSSIER)?.version ?? 0;
      return ask<Changed>('/api/changes', { version, ...step });
    },
    onMutate: async (step) => {
      await client.cancelQueries({ queryKey: DOSSIER });
      const before = client.getQueryData<DossierAnswer>(DOSSIER);
      if (before) client.setQueryData(DOSSIER, patched(before, step.changes));
      return { before };
    },
    onError: (error, _step, context) => {
      if (context?.before) client.setQueryData(DOSSIER, context.before);
      trouble(error.message);
    },
    onSuccess: (changed, step, context) => {
      if (changed.conflicts.length === 0) {
        said(`${step.label}: done.`);
        return;
      }
      if (context?.before) client.setQueryData(DOSSIER, context.before);
      conflicts(step, changed.conflicts);
    },
    onSettled: () => client.invalidateQueries({ queryKey: DOSSIER }),
  });
}

/** Takes the last step back, or makes it again. */
export function useStep(way: 'undo' | 'redo', { said, trouble }: Outcome) {
  const client = useQueryClient();
  return useMutation({
    scope: { id: 'changes' },
    mutationFn: () => ask<Changed>(`/api/${way}`, {}),
    onSuccess: (changed) => {
      const label = (way === 'undo' ? changed.redo : changed.undo)?.label ?? '';
      if (changed.conflicts.length > 0) trouble(changed.conflicts.map((c) => c.message).join(' '));
      else said(`${way === 'undo' ? 'Undone' : 'Done again'}: ${label}.`);
    },
    onError: (error) => trouble(error.message),
    onSettled: () => client.invalidateQueries({ queryKey: DOSSIER }),
  });
}

/** Gives the collector's word on a change that met an edit before it could be written. */
export function useSettle(trouble: Outcome['trouble']) {
  const client = useQueryClient();
  return useMutation({
    scope: { id: 'changes' },
    mutationFn: (word: SettleRequest) => ask<Changed>('/api/settle', word),
    onError: (error) => trouble(error.message),
    onSettled: () => client.invalidateQueries({ queryKey: DOSSIER }),
  });
}
