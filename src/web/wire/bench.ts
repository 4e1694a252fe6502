import { keepPreviousData, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import type {
  BenchBorders,
  BenchComparison,
  BenchCopy,
  BenchList,
  BenchMarkRequest,
  BenchMoved,
  BenchOutline,
  BenchRelief,
  BenchSide,
} from '../../contract/index.ts';
import { ask, askPicture } from './ask.ts';
import { DOSSIER } from './queries.ts';

/** The copies and their pictures, asked anew where the dossier has changed. */
export function useBenchList(version: number) {
  return useQuery({
    queryKey: ['bench', version],
    queryFn: ({ signal }) => ask<BenchList>('/api/bench', undefined, signal),
    placeholderData: keepPreviousData,
    refetchOnMount: 'always',
  });
}

/** One copy, measured; the last answer stays while it is measured anew. */
export function useBenchCopy(id: string, version: number) {
  return useQuery({
    queryKey: ['bench-copy', id, version],
    queryFn: ({ signal }) => ask<BenchCopy>(pathOf(id), undefined, signal),
    placeholderData: keepPreviousData,
    refetchOnMount: 'always',
    retry: false,
  });
}

/** What a hand does to a copy: it moves the outline, or adds and judges marks. */
export type BenchStep =
  | { readonly to: 'outline'; readonly body: BenchOutline }
  | { readonly to: 'marks'; readonly body: BenchMarkRequest };

/** Makes a step at the bench; what only tries an outline changes nothing. */
export function useBenchStep(id: string, version: number, trouble: (sentence: string) => void) {
  const client = useQueryClient();
  return useMutation({
    scope: { id: 'changes' },
    mutationFn: ({ to, body }: BenchStep) => ask<BenchCopy>(`${pathOf(id)}/${to}`, body),
    onSuccess: async (copy, { to, body }) => {
      if (to === 'outline' && !body.keep) return;
      client.setQueryData(['bench-copy', id, version], copy);
      await client.invalidateQueries({ queryKey: DOSSIER });
    },
    onError: (error) => trouble(error.message),
  });
}

/** What follows at once from what a hand moves: one question at a time, then the newest. */
export function useFollowed(id: string) {
  const [borders, setBorders] = useState<BenchBorders>();
  const [trouble, setTrouble] = useState('');
  const newest = useRef<BenchMoved>(undefined);
  const asking = useRef(false);
  const follow = async (moved: BenchMoved) => {
    newest.current = moved;
    if (asking.current) return;
    asking.current = true;
    let asked: BenchMoved | undefined;
    while (newest.current && newest.current !== asked) {
      asked = newest.current;
      try {
        const answer = await ask<BenchBorders>(`${pathOf(id)}/borders`, asked);
        if (newest.current) setBorders(answer);
        setTrouble('');
      } catch (error) {
        setTrouble((error as Error).message);
      }
    }
    asking.current = false;
  };
  const forget = () => {
    newest.current = undefined;
    setBorders(undefined);
    setTrouble('');
  };
  return { borders, trouble, follow, forget };
}

/** The copy as it would be with what a hand moved, all marks measured; nothing is kept. */
export function useTried(id: string, moved: BenchMoved | undefined) {
  const { data } = useQuery({
    queryKey: ['bench-tried', id, moved],
    enabled: moved !== undefined,
    queryFn: ({ signal }) =>
      ask<BenchCopy>(`${pathOf(id)}/outline`, { ...moved, refine: null, keep: false }, signal),
    gcTime: 60_000,
    retry: false,
  });
  return data;
}

/** What the pictures under a moved lamp say of a face; measured when it is first asked for. */
export function useRelief(id: string, side: BenchSide, stamp: string) {
  return useQuery({
    queryKey: ['bench-relief', id, side, stamp],
    queryFn: ({ signal }) => ask<BenchRelief>(`${pathOf(id)}/relief/${side}`, undefined, signal),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}

/** A face compared with a picture beside it, once it is wanted: that takes some seconds. */
export function useComparison(id: string, side: BenchSide, of: string, wanted: boolean) {
  return useQuery({
    queryKey: ['bench-compare', id, side, of],
    enabled: wanted,
    queryFn: ({ signal }) =>
      ask<BenchComparison>(
        `${pathOf(id)}/compare/${side}?of=${encodeURIComponent(of)}`,
        undefined,
        signal,
      ),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}

/** Address of a copy at the server. */
export function pathOf(id: string): string {
  return `/api/bench/${encodeURIComponent(id)}`;
}

/**
 * A picture as an address that the page can show; `stamp` tells one state of it from the next. With
 * `last`, the last one stays until the next is there.
 */
export function usePicture(path: string | null, stamp: string, last = false) {
  const { data, error, isFetching } = useQuery({
    ...(last ? { placeholderData: keepPreviousData } : {}),
    queryKey: ['bench-picture', path, stamp],
    enabled: path !== null,
    queryFn: ({ signal }) => askPicture(path ?? '', signal),
    gcTime: 60_000,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    if (!data) {
      setAddress(undefined);
      return;
    }
    const made = URL.createObjectURL(data);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [data]);
  return { address, error, isFetching };
}
