import type { PhraseRow } from '../phrases.ts';

/** Words that make a date approximate (`~`): directly before or after it. */
export const ABOUT: PhraseRow = {
  en: 'c .|c|ca .|ca|circa|about|around|approx .|approx|approximately|roughly|~|≈|week of|the week of|weekend of|the weekend of|somewhere around|sometime around|or so|or thereabouts|thereabouts|give or take|some time in',
  de: 'etwa|ungefähr|um den|um|rund|zirka|gegen|so um',
  fr: 'vers le|vers|environ|autour du|autour de|aux alentours de',
  es: 'hacia|alrededor de|aproximadamente|aprox .|aprox|sobre|cerca de',
  pt: 'por volta de|cerca de|aproximadamente|aprox .|lá por',
  it: 'verso|intorno al|intorno a|circa|attorno al|verso il',
  nl: 'omstreeks|rond|ongeveer',
  fi: 'noin|n .|suunnilleen|tienoilla|paikkeilla|arviolta',
  sv: 'omkring|ungefär|cirka|runt|kring',
  da: 'omkring|cirka|rundt|ca',
  nb: 'omtrent|rundt|cirka|omkring',
  pl: 'około|ok .|ok|mniej więcej',
  cs: 'kolem|asi|přibližně|cca',
  hu: 'körül|kb .|kb',
  ru: 'около|примерно|ок .',
  ja: '頃|ごろ|ころ|約|およそ',
  ko: '경|약|쯤|무렵',
};

/** Words that make the date before them approximate. */
export const ABOUT_BEHIND: PhraseRow = {
  en: 'or so|or thereabouts|thereabouts|give or take|~|-ish|ish|approx .|approx|circa',
  fi: 'tienoilla|paikkeilla',
  hu: 'körül',
  ja: '頃|ごろ|ころ',
  ko: '경|쯤|무렵',
};

/** Words that make a date uncertain (`?`): before it in its clause, or directly after. */
export const UNSURE: PhraseRow = {
  en: '?|maybe|probably|perhaps|possibly|presumably|prob .|prob|poss .|i think|i guess|i believe|not sure|unsure|uncertain|apparently|supposedly|likely|allegedly|if i remember|iirc|could be|might be|may be|tentative|tentatively|doubtful',
  de: 'wohl|vermutlich|wahrscheinlich|vielleicht|möglicherweise|unsicher|angeblich|evtl .|evtl|eventuell|mutmaßlich',
  fr: 'peut - être|probablement|sans doute|possiblement|incertain|à confirmer',
  es: 'quizá|quizás|tal vez|probablemente|posiblemente|dudoso|creo que',
  pt: 'talvez|provavelmente|possivelmente|incerto|acho que|creio que',
  it: 'forse|probabilmente|possibilmente|incerto|magari|credo',
  nl: 'misschien|waarschijnlijk|mogelijk|vermoedelijk|onzeker',
  fi: 'ehkä|luultavasti|mahdollisesti|todennäköisesti|kai|epävarma|varmaankin',
  sv: 'kanske|troligen|förmodligen|möjligen|sannolikt|osäkert',
  da: 'måske|formodentlig|muligvis|sandsynligvis|nok|usikkert',
  nb: 'kanskje|trolig|antakelig|muligens|sannsynligvis|usikkert',
  pl: 'może|prawdopodobnie|chyba|być może|raczej|niepewne',
  cs: 'možná|snad|pravděpodobně|nejspíš',
  hu: 'talán|valószínűleg|lehet',
  ru: 'возможно|вероятно|наверное|может быть',
  ja: 'おそらく|たぶん|多分|かも|？',
  ko: '아마|아마도|추정',
};

/** Words between the two ends of an interval. */
export const TO_WORDS: PhraseRow = {
  en: '-|to|and|through|thru|until|till|/|..|...|…',
  de: 'bis|und|bis zum',
  fr: 'à|et|au',
  es: 'a|y|al|hasta',
  pt: 'a|e|até',
  it: 'a|e|al',
  nl: 'tot|en|t/m',
  fi: 'ja',
  sv: 'till|och',
  da: 'til|og',
  pl: 'do|a|i',
  cs: 'až|a',
  ja: '～|〜|から',
  ko: '~|부터',
};

/** Words that open an interval in which one day lies. */
export const BETWEEN: PhraseRow = {
  en: 'between|sometime between|anywhere between|somewhere between',
  de: 'zwischen|zwischen dem',
  fr: 'entre|entre le',
  es: 'entre|entre el',
  it: 'tra|fra|tra il|fra il',
  nl: 'tussen',
  fi: 'välillä',
  sv: 'mellan',
  da: 'mellem',
  nb: 'mellom',
  pl: 'między|pomiędzy',
  cs: 'mezi',
};

/** Words before the first day of a stretch of time. */
export const FROM_ON: PhraseRow = {
  en: 'from|anywhere from',
  de: 'von|vom',
  fr: 'du|de',
  es: 'de|del|desde',
  it: 'dal|da',
  nl: 'van',
  sv: 'från',
  da: 'fra',
  pl: 'od',
};

/** Words between two dates of which one holds. */
export const OR_WORDS: PhraseRow = {
  en: 'or',
  de: 'oder',
  fr: 'ou',
  es: 'o',
  pt: 'ou',
  nl: 'of',
  fi: 'tai',
  sv: 'eller',
  pl: 'lub|albo',
  cs: 'nebo',
  ja: 'または|か',
};

/** Particles between day, month and year, and articles before them, which say nothing. */
export const PARTICLES: PhraseRow = {
  en: 'of|the|,|in',
  de: 'des jahres|im jahr|den|dem|im|des',
  fr: "de|d '|du|le|l '|de l '|en",
  es: 'de|del|el',
  pt: 'de|do|o|dia',
  it: "di|del|d '|il|dell '",
  fi: 'vuonna|vuoden|päivänä',
  sv: 'den|år',
  da: 'den|år',
  pl: 'roku|dnia',
  cs: 'roku|dne',
};
