import type { WireEvent } from '../../contract/index.ts';
import { token } from './ask.ts';

/** Splits a stream of `text/event-stream` into the texts of its `data` lines. */
export function takeEvents(buffer: string): { readonly data: readonly string[]; rest: string } {
  const parts = buffer.replaceAll('\r\n', '\n').split('\n\n');
  const rest = parts.pop() ?? '';
  const data = parts.map((part) =>
    part
      .split('\n')
      .filter((line) => line.startsWith('data:'))
      .map((line) => line.slice(5).trimStart())
      .join('\n'),
  );
  return { data: data.filter((text) => text !== ''), rest };
}

/**
 * Listens to what the server tells until stopped; after a break it tries again, at first soon,
 * then every ten seconds. Returns the stop.
 */
export function listen(
  tell: (event: WireEvent) => void,
  online: (up: boolean) => void,
): () => void {
  const stop = new AbortController();
  let wait = 500;
  const once = async () => {
    const response = await fetch('/api/events', {
      headers: { 'x-printlore-token': token(), accept: 'text/event-stream' },
      signal: stop.signal,
    });
    if (!response.ok || !response.body) throw new Error(`events: ${response.status}`);
    online(true);
    wait = 500;
    await readEvents(response.body, tell);
  };
  const again = async () => {
    while (!stop.signal.aborted) {
      // A break of the stream is expected (sleep, restart): say so on the page and try again.
      await once().catch(() => undefined);
      if (stop.signal.aborted) return;
      online(false);
      await new Promise((done) => setTimeout(done, wait));
      wait = Math.min(10_000, wait * 2);
    }
  };
  void again();
  return () => stop.abort();
}

async function readEvents(
  body: ReadableStream<Uint8Array>,
  tell: (event: WireEvent) => void,
): Promise<void> {
  const reader = body.pipeThrough(new TextDecoderStream() as never).getReader();
  let buffer = '';
  for (;;) {
    const { done, value } = (await reader.read()) as { done: boolean; value?: string };
    if (done) return;
    const { data, rest } = takeEvents(buffer + (value ?? ''));
    buffer = rest;
    for (const text of data) tell(JSON.parse(text) as WireEvent);
  }
}
