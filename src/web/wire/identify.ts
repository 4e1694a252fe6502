import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { IdentifyAnswer, IdentifyRequest, KeyAnswer } from '../../contract/index.ts';
import { ask } from './ask.ts';

/** Which printing a copy is; the last answer of the same copy stays while the next is reckoned. */
export function useIdentify(version: number, request: IdentifyRequest) {
  return useQuery({
    queryKey: ['identify', request.copy ?? '', version, request],
    queryFn: ({ signal }) => ask<IdentifyAnswer>('/api/identify', request, signal),
    placeholderData: (last, query) =>
      query?.queryKey[1] === (request.copy ?? '') ? keepPreviousData(last) : undefined,
    retry: false,
  });
}

/** The key to all printings of the dossier. */
export function useKey(version: number) {
  return useQuery({
    queryKey: ['key', version],
    queryFn: ({ signal }) => ask<KeyAnswer>('/api/key', undefined, signal),
    placeholderData: keepPreviousData,
    retry: false,
  });
}
