import type { Hono } from 'hono';
import type { DatingAnswer } from '../../contract/index.ts';
import { datingOf } from '../dating-answer.ts';
import { Refused } from '../refusal.ts';
import type { Session } from '../session.ts';
import { factsOf } from './dossier.ts';

/** `GET /api/dating?effort=first|refined`: waits until there is one, for a minute at most. */
export function addDating(app: Hono, session: Session): void {
  app.get('/api/dating', async (context) => {
    const effort = context.req.query('effort') ?? 'refined';
    if (effort !== 'first' && effort !== 'refined') {
      throw new Refused('bad-request', 'Ask for effort=first or effort=refined.');
    }
    const { version, dating } = await datingOf(session, effort, context.req.raw.signal);
    const { dossier } = await session.shown();
    const answer = { version, dating, facts: factsOf(dossier.evidence, session.dated) };
    // The step's answer is the wire's shape but for `readonly`, which a type test holds.
    return context.json(answer as DatingAnswer);
  });
}
