import type { Context } from 'hono';
import type { z } from 'zod';
import { Refused } from './refusal.ts';

/** Most bytes that a request may carry: a thousand claims are some 300 kB. */
export const BODY_AT_MOST = 16 * 1024 * 1024;

/** The body of a request, once it is known to be small enough, JSON, and of the shape wanted. */
export async function bodyOf<T extends z.ZodType>(
  context: Context,
  schema: T,
  atMost: number = BODY_AT_MOST,
): Promise<z.output<T>> {
  const kind = context.req.header('content-type') ?? '';
  if (!/^application\/json\s*(;|$)/i.test(kind)) {
    throw new Refused('not-json', 'Send JSON, with the content type application/json.');
  }
  const text = await textOf(context, atMost);
  const read = schema.safeParse(parsed(text));
  if (read.success) return read.data;
  const problems = read.error.issues
    .slice(0, 20)
    .map(({ path, message }) => `${path.join('.') || 'the body'}: ${message}`);
  throw new Refused('bad-request', `The request is not understood. ${problems[0]}.`, problems);
}

/** The bytes of a request. Counts while it reads, so that no header can lie about the length. */
export async function bytesOf(context: Context, atMost: number): Promise<Uint8Array> {
  const tooLarge = new Refused(
    'too-large',
    `That is more than ${Math.floor(atMost / 1024)} kB at once.`,
  );
  if (Number(context.req.header('content-length') ?? 0) > atMost) throw tooLarge;
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of context.req.raw.body ?? []) {
    length += piece.length;
    if (length > atMost) throw tooLarge;
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}

async function textOf(context: Context, atMost: number): Promise<string> {
  const bytes = await bytesOf(context, atMost);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new Refused('bad-request', 'The request is not UTF-8.');
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Refused('bad-request', `The request is not JSON: ${(error as Error).message}.`);
  }
}
