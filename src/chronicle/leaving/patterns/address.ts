import type { Found } from './found.ts';

const NUMBER = String.raw`\d{1,4}(?:[ ]?[a-zA-Z](?![\p{L}]))?(?:[-/]\d{1,4})?`;
const NAME = String.raw`\p{Lu}[\p{L}'’.-]*`;

/**
 * How streets are written in the languages of the pages and their neighbours. Common practice of
 * postal services, no source; words of few letters are left out where they mean other things.
 */
const STREETS: readonly RegExp[] = [
  new RegExp(
    String.raw`(?<![\p{L}\p{N}])${NUMBER},?[ ](?:${NAME}[ ]){1,4}(?:Street|St|Road|Rd|Avenue|Ave|Lane|Drive|Close|Crescent|Terrace|Square|Boulevard|Blvd|Gardens|Grove)(?![\p{L}])\.?`,
    'gu',
  ),
  new RegExp(
    String.raw`(?<![\p{L}])\p{Lu}[\p{L}-]*(?:stra(?:ß|ss)e|str\.|gasse|weg|platz|allee|katu|tie|kuja|gatan|vägen|straat|laan)[ ]${NUMBER}(?![\p{L}\p{N}])`,
    'gu',
  ),
  new RegExp(
    String.raw`(?<![\p{L}])(?:Rua|Avenida|Av\.|Travessa|Alameda|ul\.|ulica|al\.|aleja|Calle|Via|[Rr]ue|[Aa]venue)[ ](?:\p{L}[\p{L}'’.-]*[ ,]*){1,5}[ ]?(?:n[.ºo°]*[ ]?)?${NUMBER}(?![\p{L}\p{N}])`,
    'gu',
  ),
  new RegExp(
    String.raw`(?<![\p{L}\p{N}])\d{1,4},?[ ](?:rue|avenue|boulevard|place|chemin)[ ](?:d(?:e|u|es)[ ]|de la[ ]|l['’])?${NAME}`,
    'gu',
  ),
  /〒\s?\d{3}[-－]\d{4}/g,
  /\p{L}{2,}\d*丁目\s?\d+(?:番|[-－])\d+(?:号|[-－]\d+)?/gu,
  /\p{Script=Hangul}{2,}(?:로|길)\s?\d{1,4}(?:-\d{1,3})?(?!\s?(?:월|일|년|장|번째))(?=[\s,.(]|$)/gu,
];

/** Codes of posts whose form is telling by itself: United Kingdom (BS 7666), Brazil, Poland and others with a town. */
const POST_CODES: readonly RegExp[] = [
  /(?<![\p{L}\p{N}])(?:GIR 0AA|[A-PR-UWYZ](?:\d{1,2}|[A-HK-Y]\d|[A-HK-Y]\d\d|\d[A-HJKPSTUW]|[A-HK-Y]\d[ABEHMNPRV-Y]) \d[ABD-HJLNP-UW-Z]{2})(?![\p{L}\p{N}])/gu,
  /(?<![\p{L}\p{N}-])(?:CEP:? ?)\d{5}-?\d{3}(?![\p{L}\p{N}-])/gu,
  /(?<![\p{L}\p{N}-])\d{2}-\d{3} \p{Lu}\p{Ll}{2,}/gu,
];

/** Street addresses and telling post codes in a text. What is written otherwise is missed. */
export function addressesIn(text: string): readonly Found[] {
  return [...STREETS, ...POST_CODES].flatMap((pattern) =>
    [...text.matchAll(pattern)].map(({ 0: found, index }) => ({
      what: 'address' as const,
      text: found.trim(),
      at: index,
    })),
  );
}
