import { createHash } from 'node:crypto';

/** Files by their names, `/` between folders. */
type Files = ReadonlyMap<string, Uint8Array>;

/**
 * The files of a bag (`kunze:2018`, version 1.0) round a payload: every file of the payload under
 * `data/`, a manifest of their SHA-512 and one of the bag's own files. Nothing in it tells when it
 * was made but what `told` says, so that the same payload gives the same bag.
 *
 * @param told labels and values of `bag-info.txt`, each on one line
 */
export function bagOf(
  payload: Files,
  told: readonly (readonly [label: string, value: string])[],
): Files {
  const data = [...payload]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, bytes]) => [`data/${name}`, bytes] as const);
  const octets = data.reduce((sum, [, { length }]) => sum + length, 0);
  const info = [...told, ['Payload-Oxum', `${octets}.${data.length}`] as const];
  const tags = [
    ['bag-info.txt', textOf(info.map(([label, value]) => `${label}: ${oneLine(value)}`))],
    ['bagit.txt', textOf(['BagIt-Version: 1.0', 'Tag-File-Character-Encoding: UTF-8'])],
    ['manifest-sha512.txt', textOf(data.map(lineOf))],
  ] as const;
  return new Map([...data, ...tags, ['tagmanifest-sha512.txt', textOf(tags.map(lineOf))]]);
}

function lineOf([name, bytes]: readonly [string, Uint8Array]): string {
  return `${createHash('sha512').update(bytes).digest('hex')}  ${encoded(name)}`;
}

/** Line ends and the sign that writes them are written by number, as the standard asks. */
function encoded(name: string): string {
  return name.replace(
    /[%\r\n]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`,
  );
}

function oneLine(value: string): string {
  return value.replace(/\s+/g, ' ').trim();
}

function textOf(lines: readonly string[]): Uint8Array {
  return new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''));
}
