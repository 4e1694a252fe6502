import type { Hono } from 'hono';
import { streamSSE } from 'hono/streaming';
import type { WireEvent } from '../../contract/index.ts';
import type { Session } from '../session.ts';

/** `GET /api/events`: first how things stand, then every change of that, until one side leaves. */
export function addEvents(app: Hono, session: Session): void {
  app.get('/api/events', (context) =>
    streamSSE(context, async (stream) => {
      const waiting: WireEvent[] = [session.state()];
      let wake: () => void = () => undefined;
      const quiet = session.events.listen((event) => {
        waiting.push(event);
        wake();
      });
      stream.onAbort(() => {
        quiet();
        wake();
      });
      while (!stream.aborted && !stream.closed) {
        const event = waiting.shift();
        if (event) await stream.writeSSE({ data: JSON.stringify(event) });
        else {
          await new Promise<void>((resolve) => {
            wake = resolve;
          });
        }
      }
      quiet();
    }),
  );
}
