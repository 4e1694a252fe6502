import { createHash } from 'node:crypto';

/** SHA-512 of a text's UTF-8, in hexadecimal. */
export function sha512(text: string): string {
  return createHash('sha512').update(text, 'utf8').digest('hex');
}
