import type { Found } from './found.ts';

/** `atext` of RFC 5322, 3.2.3, with the letters beyond ASCII that RFC 6532 adds. */
const ATEXT = String.raw`[A-Za-z0-9!#$%&'*+/=?^_\x60{|}~\u00a1-\u{10ffff}-]`;
const QUOTED = String.raw`"(?:[^"\\\r\n]|\\[^\r\n])+"`;
const LOCAL = `(?:${ATEXT}+(?:\\.${ATEXT}+)*|${QUOTED})`;
/** A label of a domain (RFC 1123, 2.1). */
const LABEL = String.raw`[\p{L}\p{N}](?:[\p{L}\p{N}-]{0,61}[\p{L}\p{N}])?`;
const DOMAIN = String.raw`(?:(?:${LABEL}\.)+(?=[\p{L}\p{N}-]*\p{L})${LABEL}|\[[0-9A-Fa-f.:]+\])`;
const ADDRESS = new RegExp(String.raw`(?<![\w.@])${LOCAL}@${DOMAIN}(?![\w@])`, 'gu');
/** The sign and the dot written as words, to keep machines from reading them. */
const HIDDEN =
  /(?<![\p{L}\p{N}])[\p{L}\p{N}._+-]+\s*[[({]\s*at\s*[\])}]\s*[\p{L}\p{N}-]+(?:\s*(?:\.|[[({]\s*dot\s*[\])}])\s*[\p{L}\p{N}-]+)+/giu;
/** RFC 5321, 4.5.3.1: longest local part, in octets. */
const LONGEST_LOCAL = 64;

/**
 * E-mail addresses in a text: `addr-spec` of RFC 5322 without comments and obsolete forms
 * (`resnick:2008`). A domain of one label is passed over, since `8@auction` is more often no address.
 */
export function emailsIn(text: string): readonly Found[] {
  if (!/@|[[({]\s*at\s*[\])}]/i.test(text)) return [];
  const hits = [...text.matchAll(ADDRESS), ...text.matchAll(HIDDEN)];
  return hits.flatMap((hit) =>
    hit[0].indexOf('@') > LONGEST_LOCAL ? [] : [{ what: 'e-mail', text: hit[0], at: hit.index }],
  );
}
