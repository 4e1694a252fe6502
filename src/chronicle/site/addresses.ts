/** Names that one system or another keeps for itself. */
const KEPT = /^(con|prn|aux|nul|com\d|lpt\d|index)$/;

/** The longest file name that every system takes, with its ending to come. */
const LONGEST = 80;

/**
 * A file name for an id, safe on every system: small letters, digits and hyphens stay, every other
 * sign becomes its code between underlines; what is too long is cut and told apart by a number.
 */
export function fileNameOf(id: string): string {
  const safe = id.replace(/[^a-z0-9-]/gu, (sign) => `_${sign.codePointAt(0)?.toString(16)}_`);
  if (safe === '' || KEPT.test(safe)) return `${safe}_`;
  return safe.length <= LONGEST ? safe : `${safe.slice(0, LONGEST)}_${fnv1a(safe)}`;
}

/** The lasting address of a figure or claim within its page; spaces may not stand in one. */
export function anchorOf(name: string): string {
  return name.replace(/\s+/gu, '_');
}

/** An address that leads to a figure or claim of a page. */
export function hrefOf(page: string, name: string): string {
  return `${page}#${encodeURIComponent(anchorOf(name))}`;
}

/** The page of a printing within the folder of a language. */
export function printingPage(id: string): string {
  return `printings/${fileNameOf(id)}.html`;
}

/** The way from one page of a language to another. */
export function between(from: string, to: string): string {
  return `${'../'.repeat(from.split('/').length - 1)}${to}`;
}

/** A short number for a text, by the FNV-1a hash of 32 bits. */
function fnv1a(text: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  return (hash >>> 0).toString(16);
}
