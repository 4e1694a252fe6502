import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { ListingAnswer, ListingRequest } from '../../contract/index.ts';
import { ask } from './ask.ts';

/** What a listing comes to; nothing is asked before it is told. */
export function useListing(version: number, listing: ListingRequest | undefined) {
  return useQuery({
    queryKey: ['listing', version, listing],
    enabled: listing !== undefined,
    queryFn: ({ signal }) => ask<ListingAnswer>('/api/listing', listing, signal),
    placeholderData: keepPreviousData,
    retry: false,
  });
}
