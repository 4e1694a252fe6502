import { createHash } from 'node:crypto';

/** SHA-512 of bytes, or of a text's UTF-8, in hexadecimal. */
export function sha512(content: string | Uint8Array): string {
  return createHash('sha512').update(content).digest('hex');
}
