import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { DecideAnswer, DecideRequest, Plans } from '../../contract/index.ts';
import { ask, askPicture } from './ask.ts';

/** What may be done with each copy; the last answer stays while the next is reckoned. */
export function useDecide(version: number, request: Omit<DecideRequest, 'budget'>) {
  return useQuery({
    queryKey: ['decide', version, request],
    queryFn: ({ signal }) => ask<DecideAnswer>('/api/decide', { budget: null, ...request }, signal),
    placeholderData: keepPreviousData,
    retry: false,
  });
}

/** What to send in together and what to buy. */
export function usePlans(version: number, request: DecideRequest) {
  return useQuery({
    queryKey: ['plans', version, request],
    queryFn: ({ signal }) => ask<Plans>('/api/decide/plans', request, signal),
    placeholderData: keepPreviousData,
    retry: false,
  });
}

/** The deadlines as a file for a calendar. */
export async function askCalendar(on: string | undefined): Promise<Blob> {
  return await askPicture(`/api/decide/calendar${on === undefined ? '' : `?on=${on}`}`);
}
