import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { PricesAnswer, PrintingPrices } from '../../contract/index.ts';
import { ask } from './ask.ts';

/** The prices of every printing; the last answer stays while the next is fitted. */
export function usePrices(version: number) {
  return useQuery({
    queryKey: ['prices', version],
    queryFn: ({ signal }) => ask<PricesAnswer>('/api/prices', undefined, signal),
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}

/** One printing's prices with every sale of it. */
export function usePrintingPrices(version: number, printing: string) {
  return useQuery({
    queryKey: ['prices', version, printing],
    queryFn: ({ signal }) =>
      ask<PrintingPrices>(`/api/prices/of/${encodeURIComponent(printing)}`, undefined, signal),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}
