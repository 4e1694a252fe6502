import type { PhraseRow } from '../phrases.ts';

/** Words of a periodical's own date: `cover-date`. */
export const COVER: PhraseRow = {
  en: 'cover|cover date|cover - date|cover dated|cover - dated|coverdate|covered|cover says|cover reads|cover shows|cover gives|cover has|cover month|on the cover|on cover|on its cover|per cover|cover of|masthead|masthead says|indicia|indicia says|issue|issue of|issue dated|issue date|issue for|dated issue|in the issue of|magazine dated|magazine issue|number for|cvr|cvr date|spine says|edition of',
  de: 'titelblatt|titelseite|cover|cover - datum|coverdatum|cover sagt|laut cover|auf dem cover|heftdatum|heft|ausgabe|heftausgabe|umschlag|auf dem umschlag|auf dem titel|titeldatum|auf der titelseite|umschlagdatum',
  fr: "couverture|date de couverture|en couverture|sur la couverture|la couverture dit|couverture dit|couverture indique|numéro de|numéro d '|numéro daté|numéro daté de|daté de|daté|n º de|édition de|couv",
  es: 'portada|fecha de portada|en portada|en la portada|portada dice|la portada dice|número de|ejemplar de|edición de|revista de|cubierta',
  pt: 'capa|data de capa|na capa|capa diz|a capa diz|edição de|número de|data da capa|revista de|exemplar de',
  it: 'copertina|data di copertina|in copertina|sulla copertina|la copertina dice|copertina dice|numero di|numero del|fascicolo di|edizione di',
  nl: 'omslag|omslagdatum|op de omslag|cover zegt|nummer van|omslag zegt|uitgave van|editie van|op de cover',
  fi: 'kansi|kannessa|kannen|kansipäivä|kansipäiväys|kansi sanoo|kannen mukaan|numero',
  sv: 'omslag|omslaget|omslagsdatum|på omslaget|omslaget säger|nummer för|numret för',
  da: 'forside|forsiden|forsidedato|på forsiden|omslag|omslaget|nummer for|omslagsdato',
  nb: 'forside|forsiden|forsidedato|på forsiden|omslag|omslaget|omslagsdato',
  pl: 'okładka|okładce|na okładce|data okładki|data na okładce|okładka mówi|numer z|okładkowa',
  cs: 'obálka|obálce|na obálce|datum obálky|datum na obálce|obálka uvádí|číslo z',
  hu: 'borító|borítón|a borítón|borítódátum|lapszám',
  ru: 'обложка|на обложке|дата обложки|номер за',
  ja: '表紙|月号|号|号表紙|奥付',
  ko: '표지|호|월호',
  zh: '封面|月号|月號|刊号',
};

/** Words of the year on a grading label: `label-year`. */
export const LABEL: PhraseRow = {
  en: 'label|label year|label says|label reads|label gives|label has|label shows|labelled|labelled as|labeled|labeled as|slab|slab says|slab label|slab label says|slab reads|slabbed as|slabs say|slabs|graded as|cert label|cert says|cert label says|grading label|holder|holder says|flip|flip says|on the label|on the slab|on label|labels say|labels|encapsulated as|case says|per label|insert says',
  de: 'label|label sagt|etikett|auf dem etikett|slab|slab sagt|laut label|gradinglabel|auf dem label|etikett sagt|slab - etikett',
  fr: "étiquette|sur l ' étiquette|étiquette dit|étiquette indique|l ' étiquette dit|label|slab|boîtier",
  es: 'etiqueta|en la etiqueta|etiqueta dice|la etiqueta dice|slab|cápsula',
  pt: 'etiqueta|na etiqueta|etiqueta diz|a etiqueta diz|rótulo|slab|cápsula',
  it: "etichetta|sull ' etichetta|etichetta dice|l ' etichetta dice|slab|custodia",
  nl: 'etiket|op het etiket|label zegt|slab|label|etiket zegt',
  fi: 'etiketti|etiketissä|tarra|tarrassa|slabi|kotelo|kotelossa|label',
  sv: 'etikett|etiketten|på etiketten|etiketten säger|slab',
  da: 'etiket|etiketten|på etiketten|slab|mærkat',
  nb: 'etikett|etiketten|på etiketten|slab',
  pl: 'etykieta|na etykiecie|etykiecie|slab|etykieta mówi',
  cs: 'štítek|na štítku|štítku|slab|etiketa|etiketě',
  hu: 'címke|címkén|a címkén|slab',
  ru: 'этикетка|на этикетке|слаб',
  ja: 'ラベル|鑑定ラベル|スラブ',
  ko: '라벨|슬랩',
  zh: '标签|標籤|评级标签',
};

/** Words of a copyright line: `copyright-year`. */
export const COPYRIGHT: PhraseRow = {
  signs: '©|( c )|℗|Ⓒ|ⓒ|(c)',
  en: 'copyright|copyright line|copyright says|copyright year|copyright date|copyrighted|copr .|copr|copyright notice|copyright on card',
  de: 'copyright|urheberrecht|copyrightjahr|copyright - jahr|copyrightzeile|copyrightvermerk',
  fr: 'copyright|droits|mention de copyright',
  es: 'copyright|derechos',
  pt: 'copyright|direitos',
  it: 'copyright|diritti',
  fi: 'copyright|tekijänoikeus|tekijänoikeusvuosi',
  pl: 'prawa autorskie',
  ja: '著作権|コピーライト',
  ko: '저작권',
  zh: '版权|版權',
};

/** Words of the printer's day: `printed-on`. */
export const PRINTED: PhraseRow = {
  en: 'printed|printed on|printed in|print date|printing date|print run|print run of|date of printing|printed sheet|printed about|off the press|off press|press date|run off|sheet dated|printer ran|print code|went to press|sent to the printer|sent to press|at the printer|to press|to the printer',
  de: 'gedruckt|druckdatum|druck|druck vom|drucktermin|im druck|druckauflage|andruck|gedruckt am|gedruckt im|druckbogen',
  fr: "imprimé|imprimée|impression|date d ' impression|tirage|tirage de|tiré",
  es: 'impreso|impresa|impresión|fecha de impresión|tirada|tirada de',
  pt: 'impresso|impressa|impressão|data de impressão|tiragem|tiragem de',
  it: 'stampato|stampata|stampa|data di stampa|tiratura|finito di stampare',
  nl: 'gedrukt|drukdatum|druk|oplage|gedrukt in',
  fi: 'painettu|painettiin|painopäivä|painos painettu|painatus|painossa',
  sv: 'tryckt|trycktes|tryckdatum|tryckning|tryck',
  da: 'trykt|trykdato|trykning|tryk',
  nb: 'trykt|trykkdato|trykking|trykket',
  pl: 'wydrukowano|wydrukowana|wydrukowany|drukowano|druk|data druku|oddano do druku',
  cs: 'vytištěno|vytištěna|vytištěn|tištěno|tisk|datum tisku',
  hu: 'nyomtatva|nyomtatták|nyomás',
  ru: 'напечатана|напечатан|печать|дата печати|отпечатана',
  ja: '印刷|印刷日',
  ko: '인쇄|인쇄일',
  zh: '印刷|印制|印製',
};

/** Words of the collector's own doings: a date beside them is no claim on a printing. */
export const NO_CLAIM: PhraseRow = {
  en: 'fetched|downloaded|captured|saved|screenshot|crawled|cached|accessed|retrieved|checked|checked on|last checked|re - checked|as of|archived|noted|notes started|note to self|updated|last updated|last update|last edited|edited|viewed|visited|read on|looked up|snapshot|snapshot of|snapshot from|consulted|compiled|started|begun|started this list|written|wrote to|wrote|emailed|e - mailed|mailed|asked|asked again|called|phoned|rang|replied|answered|reply|no answer|ordered|order placed|shipped to me|paid|sent|sent to|sent off|sent in|submitted|auction|auction ended|ended at|ebayed|meeting|met|born|birthday|deadline|remind|reminder|todo|to do|to - do|ask|call|write to|email|check|follow up|backup|back up|scanned|copied|moved|joined|posted|post of|posted on|thread|thread of|today|yesterday|insured|rates|tax|this list|list started|list begun|draft|revised|revision|club meeting|convention|fair|phone call|talked|talked to|spoke|spoke to|heard from|interview|interviewed|need to|should ask|remember to|parcel|package|delivered|dispatched|dentist|holiday|vacation|founded|opened in|closed in|established|since then|anniversary|exchange rate|stated on|letter of|letter dated|visit|trip|catalogued by me|entered|typed up|printed out|pages printed|library',
  de: 'abgerufen|stand|stand vom|zuletzt|aktualisiert|notiert|geschrieben|geschrieben an|gefragt|nachgefragt|angerufen|angefragt|bezahlt|bestellt|verschickt|abgeschickt|geprüft|archiviert|eingetragen|fragen|nachfragen|begonnen|angefangen|treffen|geburtstag|auktion|eingereicht|messe|börse',
  fr: 'consulté|consultée|consulté le|mis à jour|mise à jour|demandé|demander|écrit à|appelé|appeler|noté|archivé|archivée|vérifié|vérifier|commandé|payé|envoyé|à faire|rappeler|commencé|réunion|enchère|bourse',
  es: 'consultado|consultada|actualizado|actualizada|preguntar|preguntado|pregunté|escribí|escribir|llamar|llamé|anotado|archivado|archivada|revisado|pedido|pagado|enviado|pendiente|subasta|empezado',
  pt: 'consultado|consultada|acessado|acessada|acedido|atualizado|atualizada|perguntar|perguntei|escrevi|escrever|ligar|liguei|anotado|arquivado|arquivada|verificado|verificar|pedido|pago|enviado|pendente|leilão|começado',
  it: 'consultato|consultata|aggiornato|aggiornata|chiedere|chiesto|scritto a|scrivere|chiamare|chiamato|annotato|archiviato|archiviata|controllato|controllare|ordinato|pagato|spedito|da fare|asta|iniziato',
  nl: 'geraadpleegd|bijgewerkt|gevraagd|vragen|gebeld|bellen|genoteerd|gearchiveerd|gecontroleerd|besteld|betaald|verstuurd|te doen|veiling|begonnen',
  fi: 'luettu|haettu|päivitetty|kysy|kysyin|kysytty|soita|soitin|kirjoitin|kirjoita|merkitty|arkistoitu|tarkistettu|tarkista|tilattu|maksettu|lähetetty|aloitettu|huutokauppa|muista|katsottu',
  sv: 'hämtad|hämtat|läst|uppdaterad|uppdaterat|frågade|fråga|ringde|ring|skrev|skriv|noterat|arkiverad|kollat|kolla|kontrollerad|beställt|betalt|skickat|påbörjad|auktion',
  da: 'hentet|læst|opdateret|spurgte|spørg|ringede|ring|skrev|skriv|noteret|arkiveret|tjekket|tjek|bestilt|betalt|sendt|påbegyndt|auktion',
  nb: 'hentet|lest|oppdatert|spurte|spør|ringte|ring|skrev|skriv|notert|arkivert|sjekket|sjekk|bestilt|betalt|sendt|påbegynt|auksjon',
  pl: 'dostęp|aktualizacja|zaktualizowano|zapytać|zapytałem|zadzwonić|napisać|napisałem|zanotowano|zarchiwizowano|sprawdzono|sprawdzić|zamówiono|zapłacono|wysłano|do zrobienia|aukcja|stan na',
  cs: 'přístup|aktualizováno|zeptat|zavolat|napsat|napsal jsem|poznamenáno|archivováno|ověřeno|ověřit|objednáno|zaplaceno|odesláno|aukce|stav k',
  ja: '閲覧|更新|確認する|問い合わせ|質問|注文|支払|発送|現在|アクセス',
  ko: '열람|업데이트|문의|주문|결제|발송|현재',
  zh: '访问|查询|更新|询问|詢問|订购|付款',
};

/** Words that deny a sighting: the date beside them is none. */
export const DENIED: PhraseRow = {
  en: 'nobody has seen|nobody saw|nobody has|nobody _ dated before|no one has seen|no one saw|have never seen|has never seen|i have never seen|never saw',
  de: 'niemand hat|niemand sah',
  fr: "personne n ' a",
  es: 'nadie ha',
  pt: 'ninguém viu',
  it: 'nessuno ha',
  fi: 'kukaan ei',
  sv: 'ingen har',
  da: 'ingen har',
};
