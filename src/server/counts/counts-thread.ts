import type { Evidence } from '../../evidence/index.ts';
import { answerTasks } from '../../host/index.ts';
import { type Population, populationOf, type Records } from '../../population/index.ts';

/** What the counting thread is asked for. */
export interface CountTask {
  readonly records: Records;
  readonly evidence: Evidence;
}

answerTasks(
  ({ records, evidence }: CountTask): Population =>
    populationOf(records, evidence, records.newestDay),
);
