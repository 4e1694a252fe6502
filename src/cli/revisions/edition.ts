import type { Revision, State } from '../../chronicle/index.ts';
import type { Dossier, Fault } from '../../dossier/index.ts';
import { type Edition, editionOf, madeWith, stateIn, type Worked } from '../../press/index.ts';
import { WrongCall } from '../wrong-call.ts';

/** The revisions of a dossier as they were read. */
export interface ReadRevisions {
  readonly revisions: readonly Revision[];
  readonly faults: readonly Fault[];
}

/** The revision to publish. Throws `WrongCall` where one is broken or nothing has a day. */
export function editionIn(dossier: Dossier, worked: Worked, frozen: ReadRevisions): Edition {
  if (frozen.faults.length > 0)
    throw new WrongCall('Nothing is frozen while a revision is broken.');
  return editionOf(dossier, dated(worked), frozen.revisions, madeWith());
}

/** The dossier as it stands. Throws `WrongCall` where nothing in it has a day. */
export function stateNow(dossier: Dossier, worked: Worked): State {
  return stateIn(dossier, dated(worked), madeWith());
}

function dated(worked: Worked): Worked {
  if (worked.account.asOf === null)
    throw new WrongCall('Nothing in the dossier has a day: give one with --on.');
  return worked;
}
