/**
 * Cue words so common that they count only where they touch the date, articles aside, a language
 * a row.
 */
export const TOUCHING: Readonly<Record<string, string>> = {
  en: 'from since starting by before after until till onwards out live hit hits sold drop plan due issue street eta coming ended stopped owned got found expected photo stamped given',
  de: 'ab seit bis vor nach kam heft druck beleg bon',
  fr: 'depuis avant apres arrivee arrive ticket foto photo tire',
  es: 'desde hasta tras',
  pt: 'desde ate apos para',
  it: 'dal dopo entro',
  nl: 'vanaf sinds tot na voor uit druk bon uitgave',
  fi: 'alkaen asti saakka ennen mennessa jalkeen numero kuva viimeistaan lahtien',
  sv: 'sedan fore innan efter senast',
  da: 'siden indtil før efter senest etter inden tryk',
  pl: 'od do po przed brak druk',
  cs: 'od do po pred tisk cislo',
  hu: 'elott utan',
  ru: 'до после перед',
  ja: 'から 前 号 まで まだ',
  ko: '부터 까지 전 호 후',
  zh: '前 号 之后',
};
