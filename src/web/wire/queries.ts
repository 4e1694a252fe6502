import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type {
  DatingAnswer,
  DossierAnswer,
  DossiersAnswer,
  WireDating,
  WireEvent,
} from '../../contract/index.ts';
import { ask, Refused } from './ask.ts';
import { listen } from './events.ts';

export const DOSSIER = ['dossier'] as const;

/** The open dossier. */
export function useDossier() {
  return useQuery({
    queryKey: DOSSIER,
    queryFn: ({ signal }) => ask<DossierAnswer>('/api/dossier', undefined, signal),
  });
}

/** Dossiers opened lately. */
export function useDossiers() {
  return useQuery({
    queryKey: ['dossiers'],
    queryFn: ({ signal }) => ask<DossiersAnswer>('/api/dossiers', undefined, signal),
  });
}

function useEffort(effort: 'first' | 'refined', version: number | undefined, wanted: boolean) {
  return useQuery({
    queryKey: ['dating', effort, version],
    enabled: wanted && version !== undefined,
    queryFn: async ({ signal }) => {
      const answer = await ask<DatingAnswer>(`/api/dating?effort=${effort}`, undefined, signal);
      if (!answer.dating || answer.version !== version) throw new Error('not dated yet');
      return answer.dating;
    },
    // Not ready yet: ask again. A refusal will not change by asking.
    retry: (asked, error) => asked < 20 && !(error instanceof Refused),
    retryDelay: 400,
    gcTime: 60_000,
    staleTime: Number.POSITIVE_INFINITY,
  });
}

/** The dating of a version, the refined one as soon as there is one, meanwhile the last known. */
export interface Dated {
  readonly dating: WireDating | undefined;
  /** What is shown is older than the dossier, or only the first answer. */
  readonly pending: 'dating' | 'refining' | 'none';
  readonly error: Error | null;
}

/** Asks for the first answer, then for the refined one. */
export function useDating(version: number | undefined): Dated {
  const first = useEffort('first', version, true);
  const refined = useEffort('refined', version, first.isSuccess || first.isError);
  const found = refined.data ?? first.data;
  const [last, setLast] = useState<WireDating>();
  if (found && found !== last) setLast(found);
  const error = refined.error ?? (first.error && !refined.data ? first.error : null);
  if (!found) return { dating: last, pending: error ? 'none' : 'dating', error };
  return { dating: found, pending: refined.data || error ? 'none' : 'refining', error };
}

/** Follows the server's events; `onOutside` when another program changed the files. */
export function useEvents(onOutside: () => void, onTrouble: (message: string) => void): boolean {
  const client = useQueryClient();
  const [up, setUp] = useState(true);
  useEffect(() => {
    let lost = false;
    const tell = (event: WireEvent) => {
      const shown = client.getQueryData<DossierAnswer>(DOSSIER);
      if (event.outside) onOutside();
      if (event.trouble) onTrouble(event.trouble);
      if (shown && shown.version !== event.version && !client.isMutating()) {
        void client.invalidateQueries({ queryKey: DOSSIER });
      }
    };
    return listen(tell, (online) => {
      setUp(online);
      if (online && lost) void client.invalidateQueries();
      lost = !online;
    });
  }, [client, onOutside, onTrouble]);
  return up;
}
