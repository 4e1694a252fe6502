import { identificationKey, identify } from '../../catalogue/index.ts';
import { answerTasks } from '../../host/index.ts';
import { bestBatches, bestPurchases, pricesOf } from '../../market/index.ts';
import type { DeskReply, DeskTask } from './tasks.ts';

answerTasks(async (task: DeskTask): Promise<DeskReply> => {
  switch (task.do) {
    case 'prices':
      return { prices: pricesOf(task.ground) };
    case 'identify':
      return { identified: identify(task.known, task.seen) };
    case 'key':
      return { key: identificationKey(task.known) };
    case 'plans': {
      const { decisions, tiers, wants, offers, budget } = task;
      const batches = await bestBatches(decisions, tiers, budget);
      return { plans: { batches, purchases: await bestPurchases(wants, offers, budget) } };
    }
  }
});
