import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { BenchKept, BenchProgress, Changed, DossierAnswer } from '../../contract/index.ts';
import { ask, send } from './ask.ts';
import { pathOf } from './bench.ts';
import type { Step } from './changes.ts';
import { DOSSIER } from './queries.ts';

/** A picture to be kept, and what it shows. */
export interface Sent {
  readonly file: File;
  readonly role: string;
}

/** Sends pictures of a copy one after the other; says how far it is, and what went wrong. */
function useSending() {
  const client = useQueryClient();
  const [stage, setStage] = useState('');
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);
  const during = async (work: () => Promise<void>): Promise<boolean> => {
    setBusy(true);
    setTrouble('');
    try {
      await work();
      return true;
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
      return false;
    } finally {
      setBusy(false);
      setStage('');
    }
  };
  const sendAll = async (copy: string, pictures: readonly Sent[]) => {
    for (const [k, { file, role }] of pictures.entries()) {
      setStage(`Picture ${k + 1} of ${pictures.length}, ${file.name}, is being kept …`);
      await send<BenchKept>(`${pathOf(copy)}/pictures/${role}`, file);
    }
    await client.invalidateQueries({ queryKey: ['bench'] });
    await client.invalidateQueries({ queryKey: ['bench-copy', copy] });
  };
  return { client, stage, trouble, busy, setStage, during, sendAll };
}

/** Begins a copy: its rows as one step, then its pictures. True where all of it was kept. */
export function useNewCopy() {
  const { client, stage, trouble, busy, setStage, during, sendAll } = useSending();
  const begin = (step: Step, copy: string, pictures: readonly Sent[]) =>
    during(async () => {
      setStage('Its row is being written …');
      const version = client.getQueryData<DossierAnswer>(DOSSIER)?.version ?? 0;
      await ask<Changed>('/api/changes', { version, ...step });
      try {
        await sendAll(copy, pictures);
      } finally {
        await client.invalidateQueries({ queryKey: DOSSIER });
      }
    });
  return { begin, stage, trouble, busy };
}

/** Adds pictures to a copy that is there. True where all were kept. */
export function useMorePictures(copy: string) {
  const { stage, trouble, busy, during, sendAll } = useSending();
  return {
    add: (pictures: readonly Sent[]) => during(() => sendAll(copy, pictures)),
    stage,
    trouble,
    busy,
  };
}

/** How far the measuring of a copy has come, asked while it goes on. */
export function useBenchProgress(id: string, wanted: boolean) {
  const { data } = useQuery({
    queryKey: ['bench-progress', id],
    enabled: wanted,
    queryFn: ({ signal }) => ask<BenchProgress>(`${pathOf(id)}/progress`, undefined, signal),
    refetchInterval: 400,
    gcTime: 0,
  });
  return wanted ? data : undefined;
}
