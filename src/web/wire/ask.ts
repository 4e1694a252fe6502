import type { Refusal } from '../../contract/index.ts';

/** The server said no, in a sentence for the collector. */
export class Refused extends Error {
  readonly code: string;
  constructor(code: string, message: string) {
    super(message);
    this.name = 'Refused';
    this.code = code;
  }
}

/** The token of this start, from the page itself. */
export function token(): string {
  return document.querySelector<HTMLMetaElement>('meta[name="printlore-token"]')?.content ?? '';
}

/** Asks the server of this page; throws `Refused` with its sentence where it says no. */
export async function ask<T>(path: string, body?: unknown, signal?: AbortSignal): Promise<T> {
  return (await (await answer(path, body, signal)).json()) as T;
}

/** Asks for a picture; throws `Refused` as `ask` does. */
export async function askPicture(path: string, signal?: AbortSignal): Promise<Blob> {
  return await (await answer(path, undefined, signal)).blob();
}

/** Sends a file as it is; throws `Refused` as `ask` does. */
export async function send<T>(path: string, file: Blob): Promise<T> {
  return (await (await answer(path, file)).json()) as T;
}

async function answer(path: string, body?: unknown, signal?: AbortSignal): Promise<Response> {
  const headers: Record<string, string> = { 'x-printlore-token': token() };
  const isFile = body instanceof Blob;
  if (body !== undefined) {
    headers['content-type'] = isFile ? 'application/octet-stream' : 'application/json';
  }
  const response = await fetch(path, {
    method: body === undefined ? 'GET' : 'POST',
    headers,
    ...(body === undefined ? {} : { body: isFile ? body : JSON.stringify(body) }),
    ...(signal ? { signal } : {}),
  }).catch((cause: unknown) => {
    if (signal?.aborted) throw cause;
    throw new Refused(
      'unreachable',
      'Printlore does not answer. Is it still running in its terminal?',
    );
  });
  if (response.ok) return response;
  const refusal = (await response.json().catch(() => undefined)) as Refusal | undefined;
  throw new Refused(
    refusal?.error?.code ?? String(response.status),
    refusal?.error?.message ?? `The server answered ${response.status}.`,
  );
}
