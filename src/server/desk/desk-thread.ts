import { answerTasks } from '../../host/index.ts';
import { bestBatches, bestPurchases, pricesOf } from '../../market/index.ts';
import type { DeskReply, DeskTask } from './tasks.ts';

answerTasks(async (task: DeskTask): Promise<DeskReply> => {
  if (task.do === 'prices') return { prices: pricesOf(task.ground) };
  const { decisions, tiers, wants, offers, budget } = task;
  return {
    plans: {
      batches: await bestBatches(decisions, tiers, budget),
      purchases: await bestPurchases(wants, offers, budget),
    },
  };
});
