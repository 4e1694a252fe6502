/** Words of headings and column heads that name no source. */
export const GENERIC: Readonly<Record<string, string>> = {
  en: 'notes note dates date timeline chronology printings printing cards card list lists todo misc miscellaneous questions question open overview summary research known unknown other rest others languages language europe asia releases release prices price sales contacts history story part section chapter data info details remarks remark comments comment things stuff evidence claims claim facts findings master everything anything page draft log ledger diary journal wanted wants want have needs variants variant versions version wave waves finish finishes number numbers english intro introduction legend key abbreviations table what when where who evidence more my our the of on for and in all from various assorted sundry early late new old market markets region regions country countries sheet raw unsorted loose ends leads followup follow up confirmed unconfirmed disputed doubtful certain uncertain checked unchecked reference period year years month months decade item items entry entries column columns',
  de: 'notizen notiz daten datum liste karten karte offen fragen frage preise sonstiges ubersicht chronologie zeitleiste bemerkung bemerkungen druck auflage',
  fr: 'notes note dates date liste cartes carte questions prix divers chronologie remarques remarque apercu',
  es: 'notas nota fechas fecha lista cartas carta preguntas precios varios cronologia observaciones resumen',
  pt: 'notas nota datas data lista cartas carta perguntas precos diversos cronologia observacoes resumo',
  it: 'note nota date data lista carte carta domande prezzi vari cronologia osservazioni',
  fi: 'muistiinpanot muistiinpano paivat paivamaarat lista kortit kortti kysymykset hinnat muut aikajana huomiot julkaisut',
  sv: 'anteckningar datum lista kort fragor priser ovrigt tidslinje',
  da: 'noter datoer liste kort sporgsmal priser diverse tidslinje',
  pl: 'notatki daty lista karty karta pytania ceny inne chronologia uwagi',
  ja: 'メモ 日付 一覧 カード',
  ko: '메모 날짜 카드',
};

/** Headings beneath which a date is no claim on a printing. */
export const IDLE_HEADING =
  /\b(?:to ?-?do|todo|questions?|wants?|wanted|prices?|sales|contacts?|phone|shopping|expenses|budget|auctions?|diary|correspondence|purchases log|errands|meetings?|asking|follow.?ups?|next steps|fragen|preise|offene fragen|questions|prix|preguntas|precios|perguntas|domande|prezzi|kysymykset|hinnat|fragor|frågor|priser|spørgsmål|pytania|ceny)\b/iu;

/** How lines begin that remind the collector of something to do and state nothing. */
export const TASK =
  /^(?:to ?-?do\b|ask\b|find out\b|check\b(?! ?list)|verify\b|remind\b|remember to\b|need to\b|must\b|should (?:ask|check|write|call)|call\b|phone\b|e-?mail\b|write to\b|look (?:for|up)\b|follow up\b|q:|question:|idea:|fragen\b|nachfragen\b|prüfen\b|demander\b|vérifier\b|rappeler\b|preguntar\b|comprobar\b|perguntar\b|verificar\b|chiedere\b|controllare\b|kysy\b|tarkista\b|soita\b|muista\b|fråga\b|kolla\b|ring\b|spørg\b|tjek\b|spør\b|sjekk\b|zapytać\b|sprawdzić\b|zeptat\b|ověřit\b|vragen\b|nakijken\b)/iu;

/** How questions begin. */
export const ASKING =
  /^(?:does|do|did|was|were|is|are|who|where|when|why|which|what|how|has|have|had|could|can|should|would|wann|wer|wo|war|quand|qui|où|cuándo|quién|quando|quem|chi|milloin|kuka|när|vem|hvornår|hvem|når|kiedy|kto|kdy|wanneer)\b/iu;
