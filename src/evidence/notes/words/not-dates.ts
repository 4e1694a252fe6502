import type { PhraseRow } from '../phrases.ts';

/** Signs and words for money, before or after an amount. */
export const MONEY: PhraseRow = {
  signs: '$|€|£|¥|₩|₽|¢|₤|R $|US $|円|元|원|圓|￥|＄',
  codes: 'usd|eur|gbp|jpy|krw|brl|fim|dem|frf|esp|pte|itl|nlg|sek|dkk|nok|pln|czk|huf|chf|aud|cad',
  en: 'dollar|dollars|euro|euros|pound|pounds|pence|cents|bucks|quid|yen|won',
  de: 'mark|dm|pfennig|franken',
  fr: 'francs|franc|ff',
  es: 'pesetas|ptas|pts|pesos',
  pt: 'reais|real|escudos|cruzeiros',
  it: 'lire|lira',
  nl: 'gulden',
  fi: 'mk|markkaa|euroa|penniä',
  sv: 'kr|kronor|öre',
  da: 'kroner',
  pl: 'zł|złotych|grosz*',
  cs: 'kč|korun',
  hu: 'ft|forint',
  ru: 'руб*',
};

/** Words of buying and selling: an amount that one of `FOR` joins to them is a price. */
export const TRADED: PhraseRow = {
  en: 'bought|buy|sold|sell|got|had|picked up|traded|ordered',
  de: 'gekauft|kaufte|verkauft|bekommen|bekam',
  fr: 'acheté|achetée|achetés|achetées|acheta|vendu|vendue|eu',
  es: 'comprado|comprada|compré|compró|vendido|vendida',
  pt: 'comprado|comprada|comprei|comprou|vendido|vendida',
  it: 'comprato|comprata|comprai|venduto|venduta',
  nl: 'gekocht|kocht|verkocht',
  fi: 'ostettu|ostin|osti|myyty',
  sv: 'köpt|köpte|såld|sålt',
  da: 'købt|købte|solgt',
  nb: 'kjøpt|kjøpte|solgt',
  pl: 'kupiony|kupiłem|kupiłam|kupił|sprzedany',
  cs: 'koupil|koupila|koupeno|prodáno',
};

/** Small words and signs between what was traded and its price. */
export const FOR: PhraseRow = {
  signs: '@|à',
  en: 'for|at',
  de: 'für|zu',
  fr: 'pour|à',
  es: 'por',
  pt: 'por|a',
  it: 'per|a',
  nl: 'voor',
  sv: 'för',
  da: 'for',
  pl: 'za|po',
  cs: 'za|po',
};

/** Words and signs before a number that is a place, a name or a rank, and no date. */
export const NUMBER_OF: PhraseRow = {
  signs: '#|№|no .|nr .|n º|n °|第|×',
  en: 'no|nos .|number|num .|num|page|p .|pp .|p|pp|pg .|vol .|vol|volume|issue|lot|cert|cert .|certificate|serial|grade|graded|pop|lens|room|box|bin|shelf|row|col|line|sheet|part|chapter|ch .|fig .|photo|img|id|code|isbn|barcode|order|invoice|parcel',
  de: 'nr|nummer|seite|heft|band|bd .|jg .|karte|auflage von',
  fr: 'no|nº|numéro|page|tome|carte|nr',
  es: 'núm .|núm|número|pág .|pág|página|carta',
  pt: 'nº|número|pág .|página|carta|núm .',
  it: 'numero|pag .|pagina|carta|num .',
  nl: 'nummer|blz .|pagina|kaart',
  fi: 'nro|n:o|numero|sivu|s .|kortti|nro .',
  sv: 'nummer|nr|sid .|sida|kort',
  da: 'nummer|nr|side|s .',
  pl: 'numer|nr|str .|strona|karta',
  cs: 'číslo|č .|str .|strana',
  ja: 'ページ|番号',
  ko: '번호|쪽',
};

/** Words and signs after a number that is a count, a size or a length of time. */
export const COUNTED: PhraseRow = {
  signs: '%|‰|x|×|枚|張|장|個|部|番|話|回|箱|권|개|명|번|°',
  en: 'copies|copy|pcs|pc .|pieces|cards|card|packs|boxes|boosters|units|views|posts|replies|members|graded|known|points|pages|minutes|min|hours|hrs|days|weeks|months|years|yrs|times|each|of them|mm|cm|dpi|lpi|g|kg|px|kb|mb|hits|collectors|people|kids|stores|shops|lots|examples|different',
  de: 'stück|stk|exemplare|karten|tage|wochen|monate|jahre|seiten|mal|uhr',
  fr: 'exemplaires|exemplaire|ex|pièces|cartes|jours|semaines|mois|ans|pages|fois',
  es: 'ejemplares|copias|unidades|cartas|días|semanas|meses|años|páginas|veces',
  pt: 'exemplares|cópias|unidades|cartas|dias|semanas|meses|anos|páginas|vezes',
  it: 'copie|pezzi|carte|giorni|settimane|mesi|anni|pagine|volte',
  nl: 'stuks|exemplaren|kaarten|dagen|weken|maanden|jaar|keer',
  fi: 'kpl|kappaletta|korttia|päivää|viikkoa|kuukautta|vuotta|sivua|kertaa|klo',
  sv: 'stycken|exemplar|dagar|veckor|månader|sidor|gånger',
  da: 'stk|stykker|eksemplarer|dage|uger|måneder|sider|gange',
  pl: 'sztuk|szt|egzemplarzy|kart|dni|tygodni|miesięcy|lat|stron|razy',
  cs: 'kusů|ks|výtisků|karet|dní|týdnů|měsíců|let|stran',
};

/** Words and signs before a telephone number. */
export const TELEPHONE: PhraseRow = {
  signs: '☎|☏|📞',
  en: 'tel .|tel|phone|ph .|call|fax|mobile|cell|telephone|ring|hotline|text',
  de: 'telefon|fon|ruf',
  fr: 'tél .|tél|téléphone',
  es: 'teléfono|tfno .|tlf .',
  pt: 'telefone|fone',
  it: 'telefono|cell .',
  fi: 'puh .|puh|puhelin|gsm',
  sv: 'telefon|tfn',
  da: 'tlf .|tlf|telefon',
  ja: '電話',
  ko: '전화',
};
