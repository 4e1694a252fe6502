import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type {
  HistoriesAnswer,
  LabelRows,
  LabelsAnswer,
  LetterAnswer,
  PopulationAnswer,
  ReportRead,
  ReportRequest,
} from '../../contract/index.ts';
import { ask } from './ask.ts';

function useCounts<T>(version: number, path: string) {
  return useQuery({
    queryKey: ['population', version, path],
    queryFn: ({ signal }) => ask<T>(path, undefined, signal),
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}

/** The counts of every printing; the last answer stays while the next is counted. */
export function usePopulation(version: number) {
  return useCounts<PopulationAnswer>(version, '/api/population');
}

/** One printing's counts by grade, report by report. */
export function useHistories(version: number, printing: string) {
  const path = `/api/population/of/${encodeURIComponent(printing)}`;
  return useCounts<HistoriesAnswer>(version, path);
}

/** The labels of the newest reports. */
export function useLabels(version: number) {
  return useCounts<LabelsAnswer>(version, '/api/population/labels');
}

/** The letter that a service would get. */
export function useLetter(version: number, service: string) {
  const query = new URLSearchParams({ service });
  return useCounts<LetterAnswer>(version, `/api/population/letter?${query}`);
}

/** The rows that a word on a label is written in. */
export async function askLabelRows(service: string, label: string): Promise<LabelRows> {
  return await ask<LabelRows>(`/api/population/rows?${new URLSearchParams({ service, label })}`);
}

/** What a pasted report is understood to say. */
export async function readPasted(request: ReportRequest): Promise<ReportRead> {
  return await ask<ReportRead>('/api/population/report', request);
}
