import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type {
  ChronicleAnswer,
  FilmRequest,
  LeavingAnswer,
  PreviewAnswer,
  ProofAnswer,
  PublishRequest,
  RevisionsAnswer,
  WorkAnswer,
} from '../../contract/index.ts';
import { ask } from './ask.ts';

const PATH = '/api/chronicle';
const WORK = ['chronicle-work'] as const;

/** How often, in ms, what is at work is asked how it comes on. */
const EVERY = 400;

function useChronicled<T>(version: number, path: string) {
  return useQuery({
    queryKey: ['chronicle', version, path],
    queryFn: ({ signal }) => ask<T>(PATH + path, undefined, signal),
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}

/** What the account lacks, and where it is written. */
export function useChronicle(version: number) {
  return useChronicled<ChronicleAnswer>(version, '');
}

/** What a publication would hold that could harm. */
export function useLeaving(version: number, prices: boolean) {
  return useChronicled<LeavingAnswer>(version, `/leaving?prices=${prices}`);
}

/** The pages as they would be published; the last ones stay while the next are made. */
export function usePreview(version: number, prices: boolean) {
  return useChronicled<PreviewAnswer>(version, `/preview?prices=${prices}`);
}

/** The stills of one printing. */
export function useStills(version: number, printing: string, language: string, prices: boolean) {
  const query = new URLSearchParams({ printing, language, prices: String(prices) });
  return useChronicled<ProofAnswer>(version, `/stills?${query}`);
}

/** The documents of one language, each a picture of its pages. */
export function useDocuments(version: number, language: string, prices: boolean) {
  return useChronicled<ProofAnswer>(version, `/documents?language=${language}&prices=${prices}`);
}

/** The frozen revisions; asked anew once `done` has changed. */
export function useRevisions(version: number, done: string) {
  return useQuery({
    queryKey: ['chronicle-revisions', version, done],
    queryFn: ({ signal }) => ask<RevisionsAnswer>(`${PATH}/revisions`, undefined, signal),
    placeholderData: keepPreviousData,
    retry: false,
  });
}

/** What is being written, or was last; asked again and again while it runs. */
export function useWriting() {
  return useQuery({
    queryKey: WORK,
    queryFn: ({ signal }) => ask<WorkAnswer>(`${PATH}/work`, undefined, signal),
    refetchInterval: ({ state }) => (state.data?.work?.state === 'running' ? EVERY : false),
    retry: false,
  });
}

/** What can be asked of the press. */
export type Order =
  | { readonly do: 'publish'; readonly request: PublishRequest }
  | { readonly do: 'film'; readonly request: FilmRequest }
  | { readonly do: 'stop' };

/** Begins to publish or to film, or stops it. */
export function useOrder() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (order: Order) =>
      ask<WorkAnswer>(`${PATH}/${order.do}`, 'request' in order ? order.request : {}),
    onSuccess: (answer, order) => {
      if (order.do !== 'stop') client.setQueryData(WORK, answer);
    },
    onSettled: () => client.invalidateQueries({ queryKey: WORK }),
  });
}
