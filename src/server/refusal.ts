import type { Context } from 'hono';
import type { Refusal } from '../contract/index.ts';

/** What a refusal can be, and the status that HTTP has for it (RFC 9110). */
export const STATUS = {
  'bad-request': 400,
  'no-token': 401,
  forbidden: 403,
  'read-only': 403,
  'not-found': 404,
  'wrong-method': 405,
  'other-dossier': 409,
  'already-there': 409,
  'at-work': 409,
  'too-large': 413,
  'not-json': 415,
  'cannot-write': 503,
  'cannot-read': 503,
  failed: 500,
} as const;
export type Code = keyof typeof STATUS;

/** Ends a request with a sentence for the collector. */
export class Refused extends Error {
  override name = 'Refused';
  readonly code: Code;
  readonly problems: readonly string[];

  constructor(code: Code, message: string, problems: readonly string[] = []) {
    super(message);
    this.code = code;
    this.problems = problems;
  }
}

/** The answer to a request that ended with an error. */
export function refuse(error: unknown, context: Context): Response {
  const { code, message, problems } =
    error instanceof Refused
      ? error
      : new Refused('failed', `That did not work: ${(error as Error).message}`);
  const body: Refusal = {
    error: { code, message, ...(problems.length > 0 ? { problems: [...problems] } : {}) },
  };
  return context.json(body, STATUS[code]);
}
