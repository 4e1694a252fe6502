import type { PhraseRow } from '../phrases.ts';

/** Nouns by which a source is known even in lower case. `*` stands for any ending. */
export const SOURCE_NOUNS: PhraseRow = {
  en: 'press releases|cat .|cat|seller|notes|my notes|friend|colleague|museum copy|printer|printers|printing house|ad copy|tv ad|radio ad|tv spot|teletext|minutes|file|dossier|folder|page|pages|site|website|web site|webpage|homepage|checklist|check list|catalogue|catalog|list|listing|listings|magazine|mag|mag .|zine|fanzine|newsletter|bulletin|ad|ads|advert|adverts|advertisement|flyer|flier|leaflet|poster|brochure|pamphlet|database|db|data base|registry|register|forum|board|message board|post|thread|letter|e - mail|email|mail|interview|receipt|till receipt|invoice|newspaper|paper|press|press release|press kit|book|guide|guidebook|price guide|handbook|yearbook|almanac|encyclopedia|encyclopaedia|wiki|archive|archives|snapshot|capture|shop|store|dealer|retailer|distributor|wholesaler|publisher|pub .|press sheet|box|wrapper|packaging|pack insert|insert|blog|video|podcast|channel|auction house|sheet|solicitation|order form|order sheet|price list|calendar|diary|photo|photograph|picture|scan|chronicle|digest|gazette|herald|journal|weekly|monthly|quarterly|review|times|tribune|courier|post office|column|article|collector|collectors|clerk|owner|museum|library card|record|records|ledger|log|logbook|notebook|sticker|stamp|postmark|report|census|memo|fax|announcement sheet|trade sheet|trade list|sell sheet|table|index|bibliography|appendix|footnote|society|club|association|circular|rep|archivist|official list|official site|grader|inventory|stocklist|stock list|faq|readme|spreadsheet|manual|booklet|timeline|chronology|mailing|listserv|usenet|feed|card shop|hobby shop|employee|insider|source',
  de: 'seite|webseite|website|homepage|checkliste|liste|katalog|heft|magazin|zeitschrift|zeitung|anzeige|werbung|prospekt|flugblatt|datenbank|forum|beitrag|brief|interview|kassenbon|quittung|rechnung|beleg|pressemitteilung|buch|handbuch|archiv|laden|händler|verlag|verlagsseite|verpackung|foto|rundbrief|newsletter|preisliste|register|verzeichnis|sammler|bestellschein|bestellliste|kalender|verein|rundschreiben|plakat|poststempel|tagebuch|kiosk',
  fr: 'dépôt légal|page|site|liste|checklist|catalogue|magazine|revue|journal|annonce|publicité|pub|prospectus|tract|base de données|base|forum|message|lettre|courrier|entretien|interview|ticket|ticket de caisse|reçu|facture|communiqué|livre|guide|archive|archives|boutique|magasin|vendeur|éditeur|emballage|photo|bulletin|affiche|registre|collectionneur|gazette|club|fanzine|bon de commande|kiosque',
  es: 'página|sitio|web|lista|catálogo|revista|periódico|diario|anuncio|publicidad|folleto|base de datos|foro|mensaje|carta|entrevista|recibo|factura|comunicado|libro|guía|archivo|tienda|vendedor|editorial|editor|caja|foto|boletín|cartel|registro|coleccionista|club|tebeo|quiosco',
  pt: 'página|site|sítio|lista|catálogo|checklist|revista|jornal|anúncio|publicidade|folheto|panfleto|banco de dados|base de dados|fórum|mensagem|carta|entrevista|recibo|nota fiscal|fatura|comunicado|livro|guia|arquivo|loja|vendedor|editora|embalagem|foto|boletim|cartaz|registro|registo|colecionador|clube|banca|almanaque|gibi',
  it: 'pagina|sito|lista|elenco|catalogo|checklist|rivista|giornale|quotidiano|annuncio|pubblicità|volantino|opuscolo|banca dati|database|forum|messaggio|lettera|intervista|scontrino|ricevuta|fattura|comunicato|libro|guida|archivio|negozio|venditore|editore|scatola|foto|bollettino|manifesto|registro|collezionista|club|edicola|almanacco',
  nl: 'pagina|site|website|lijst|checklist|catalogus|tijdschrift|blad|krant|advertentie|folder|database|forum|bericht|brief|interview|kassabon|bon|factuur|persbericht|boek|gids|archief|winkel|handelaar|uitgever|doos|foto|nieuwsbrief|poster|register|verzamelaar|club',
  fi: 'sivu|sivut|sivusto|kotisivu|lista|listaus|luettelo|katalogi|lehti|mainos|esite|tietokanta|foorumi|viesti|kirje|haastattelu|kuitti|kassakuitti|lasku|tiedote|lehdistötiedote|kirja|opas|arkisto|kauppa|kauppias|kustantaja|julkaisija|laatikko|valokuva|uutiskirje|juliste|rekisteri|keräilijä|kerho|kioski|päiväkirja|postileima|kustantajan sivu*|kustantajan luettelo*|luettelon|listan|lehden|sivun|esitteen|mainoksen',
  sv: 'sida|sidan|hemsida|webbplats|lista|listan|checklista|checklistan|katalog|katalogen|tidning|tidningen|annons|reklam|broschyr|databas|databasen|forum|inlägg|brev|intervju|kvitto|faktura|pressmeddelande|bok|guide|arkiv|butik|affär|handlare|förlag|förlaget|förpackning|foto|nyhetsbrev|affisch|register|samlare|klubb|blad|bladet',
  da: 'side|siden|hjemmeside|liste|listen|tjekliste|tjeklisten|katalog|kataloget|blad|bladet|avis|annonce|reklame|brochure|database|forum|indlæg|brev|interview|kvittering|faktura|pressemeddelelse|bog|guide|arkiv|butik|butikken|handler|forlag|forlaget|æske|foto|nyhedsbrev|plakat|register|samler|klub',
  nb: 'side|siden|hjemmeside|nettside|liste|listen|sjekkliste|sjekklisten|katalog|katalogen|blad|bladet|avis|annonse|reklame|brosjyre|database|forum|innlegg|brev|intervju|kvittering|faktura|pressemelding|bok|guide|arkiv|butikk|butikken|forhandler|forlag|forlaget|eske|foto|nyhetsbrev|plakat|register|samler|klubb',
  pl: 'strona|strony|witryna|lista|listy|checklista|katalog|katalogu|magazyn|gazeta|gazety|czasopismo|ogłoszenie|reklama|ulotka|baza danych|forum|wpis|list|wywiad|paragon|rachunek|faktura|komunikat|książka|przewodnik|archiwum|sklep|sprzedawca|wydawca|wydawcy|pudełko|zdjęcie|biuletyn|plakat|rejestr|kolekcjoner|klub|kiosk',
  cs: 'stránka|stránky|web|seznam|seznamu|checklist|katalog|katalogu|časopis|časopisu|noviny|novin|inzerát|reklama|leták|letáku|databáze|fórum|příspěvek|dopis|rozhovor|účtenka|faktura|tisková zpráva|kniha|průvodce|archiv|obchod|prodejce|vydavatel|vydavatele|krabice|foto|zpravodaj|plakát|rejstřík|sběratel|klub',
  hu: 'oldal|honlap|lista|katalógus|újság|magazin|hirdetés|adatbázis|fórum|levél|interjú|nyugta|blokk|könyv|archívum|bolt|kiadó|fotó',
  ru: 'страница|сайт|список|каталог|журнал|газета|реклама|база|форум|письмо|чек|книга|архив|магазин|издатель|фото',
  ja: 'ページ|サイト|公式|公式サイト|公式ページ|リスト|チェックリスト|カタログ|雑誌|広告|チラシ|データベース|掲示板|手紙|レシート|本|店|出版社|出版社ページ|写真|新聞|箱|誌|ブログ',
  ko: '페이지|사이트|공식|목록|체크리스트|카탈로그|잡지|광고|전단|데이터베이스|게시판|편지|영수증|책|가게|출판사|사진|신문|상자|블로그',
  zh: '页面|頁面|网站|網站|官网|清单|清單|目录|目錄|杂志|雜誌|广告|廣告|数据库|論壇|论坛|书|書|店|出版社|照片|报纸|報紙',
};

/** Words right before a source's name. */
export const BEFORE_SOURCE: PhraseRow = {
  en: 'per|as per|per the|acc . to|acc to|acc .|according to|source :|sources :|source|src :|src|ref :|ref .|ref|via|courtesy of|taken from|from|cf .|see|says|quoted in|quoting|cited in|based on|going by|from the|info from|info :|as stated by|as listed by|as given by|listed by|given by|reported by|confirmed by|stated by|told by|says the|said|noted by|noted in|published in|reported in|mentioned in|listed in|found in|given in|stated in|advertised in|announced in|announced by|announced on|according to the|thanks to|teste|fide|@|s . o .|word of|as told by|on the word of|dated by|in|on|at',
  de: 'laut|lt .|lt|gemäß|nach angabe|nach angaben|nach angaben von|quelle :|quelle|siehe|s .|vgl .|aus|aus dem|aus der|so|zufolge|per|nach auskunft|nach auskunft von|lt . dem|laut der|laut dem|in|im|auf|bei|auf der',
  fr: "selon|selon le|selon la|selon l '|d ' après|d ' après le|d ' après la|d ' apres l '|source :|source|voir|cf .|via|dans|dans le|dans la|sur|sur le|sur la|chez|suivant|au dire de|réf .",
  es: 'lo dice|dice|según|según el|según la|de acuerdo con|de acuerdo a|fuente :|fuente|ver|vía|cf .|conforme a|en|en el|en la|por',
  pt: 'segundo|segundo o|segundo a|conforme|conforme o|conforme a|de acordo com|de acordo com o|de acordo com a|fonte :|fonte|ver|via|cf .|em|no|na|pelo|pela',
  it: "lo dice|dice|lo riporta|secondo|secondo il|secondo la|secondo l '|stando a|stando al|stando alla|fonte :|fonte|vedi|v .|cfr .|tramite|da|dal|dalla|in|nel|nella|su|sul|sulla|presso|per",
  nl: 'volgens|volgens de|volgens het|bron :|bron|zie|via|blijkens|aldus|in|op|bij',
  fi: 'lähde :|lähde|ks .|kts .|katso',
  sv: 'enligt|källa :|källa|se|via|i|på|hos',
  da: 'ifølge|iflg .|iflg|kilde :|kilde|se|jf .|via|i|på|hos|jævnfør',
  nb: 'ifølge|kilde :|kilde|se|jf .|via|i|på|hos',
  pl: 'według|wg|zgodnie z|źródło :|źródło|za|zob .|patrz|w|na',
  cs: 'podle|dle|zdroj :|zdroj|viz|v|na',
  hu: 'forrás :|forrás|lásd',
  ru: 'по данным|согласно|источник :|источник|см .|по',
  ja: '出典 ：|出典 :|出典|情報元|典拠',
  ko: '출처 :|출처',
  zh: '来源 ：|来源 :|来源|來源|根据|根據|据|據',
};

/** Those of the words above that say too little by themselves: the name must look like a source. */
export const LIGHT_BEFORE_SOURCE: Readonly<Record<string, string>> = {
  en: 'from in on at see said says source ref',
  de: 'aus in im auf bei so s. siehe per auf|der aus|der aus|dem',
  fr: 'dans sur chez voir via',
  es: 'en por ver',
  pt: 'em no na pelo pela ver',
  it: 'da dal dalla in nel nella su sul sulla presso per v.',
  nl: 'in op bij zie aldus',
  sv: 'i pa hos se',
  pl: 'za w na',
  cs: 'v na',
  ru: 'по',
};

/** Words right behind a source's name. */
export const BEHIND_SOURCE: PhraseRow = {
  fi: 'mukaan',
  hu: 'szerint',
  de: 'zufolge',
  ja: 'によると|によれば|より|いわく|では|には|曰く',
  ko: '에 따르면|에 의하면|따르면',
  zh: '称|稱|说|說|显示|顯示|记载|記載',
  tr: 'göre',
};

/** Verbs by which a source speaks. */
export const SAYS: PhraseRow = {
  en: 'says|say|said|lists|listed|list it as|has it as|has it at|has it in|has it on|has it|has|have|gives|gave|shows|show|states|stated|claims|claimed|reports|reported|notes|puts it at|puts it in|puts it on|puts it|puts|dates it to|dates it|dates this|dates|quotes|mentions|mentioned|prints|tells|told me|told|insists|insisted|records|recorded|confirms|confirmed|writes|wrote|remembers|remembered|recalls|recalled|thinks|thought|swears|reckons|believes|indicates|suggests|advertises|advertised|announces|announced|announced it|promised|promises|goes with|agrees|agrees on|published|posts|posted|carried|offers|offered|repeats|prefers|favours|favors|maintains|assigns|specifies|read|reads|marked|carries|sold it|had it|sold|expected',
  de: 'sagt|sagte|nennt|nannte|gibt|gab|schreibt|schrieb|führt|listet|meldet|meldete|behauptet|zeigt|datiert|bestätigt|angibt|verzeichnet|notiert|kündigt|kündigte|hat|meint|erinnert sich',
  fr: 'dit|disait|indique|indiquait|donne|donnait|annonce|annonçait|affirme|mentionne|liste|montre|précise|écrit|confirme|date|parle de|a|se souvient',
  es: 'dice|decía|indica|da|daba|anuncia|anunciaba|afirma|menciona|lista|muestra|señala|escribe|confirma|pone|recuerda|tiene',
  pt: 'diz|dizia|indica|dá|dava|anuncia|anunciava|afirma|menciona|lista|mostra|aponta|escreve|confirma|traz|informa|informava|lembra|tem',
  it: 'dice|diceva|indica|indicava|dà|dava|riporta|riportava|annuncia|annunciava|afferma|menziona|elenca|mostra|segnala|scrive|conferma|ricorda|ha',
  nl: 'zegt|noemt|geeft|vermeldt|meldt|schrijft|toont|stelt|bevestigt|heeft|lijst',
  fi: 'sanoo|kertoo|ilmoittaa|mainitsee|antaa|väittää|näyttää|kirjoittaa|vahvistaa|listaa|merkitsee|muistaa',
  sv: 'säger|sade|anger|uppger|skriver|nämner|visar|hävdar|bekräftar|listar|ger|har|minns',
  da: 'siger|sagde|angiver|oplyser|skriver|nævner|viser|hævder|bekræfter|giver|har|husker',
  nb: 'sier|sa|oppgir|angir|skriver|nevner|viser|hevder|bekrefter|gir|har|husker',
  pl: 'mówi|podaje|podał|podała|pisze|wymienia|wskazuje|twierdzi|potwierdza|pokazuje|ma|pamięta',
  cs: 'říká|uvádí|uvádějí|píše|zmiňuje|tvrdí|potvrzuje|ukazuje|má|udává|pamatuje',
  hu: 'mondja|írja|közli|említi',
  ru: 'говорит|сообщает|указывает|пишет|даёт|дает|утверждает',
};

/** Words that no source's name begins or ends with, and that say nothing where they are left. */
export const FILLERS: Readonly<Record<string, string>> = {
  en: 'the a an my our his her their its it this that these those is was were be been are and or but so then also too while whereas though although however yet still only just even again here there of to for with without as at in on by from into about when where which who what how why if than day days date dates dated month year time first last both all some any no not very quite more most less same other another one already later earlier after before until since now ever never almost exactly later i we you he she they has had have did do does says said say gives given gave got get same too real actual true exact stated reading read week hmm ok well really rather either neither all-in-all vs versus against plus minus copy card cards version versions printing printings print prints',
  de: 'der die das des dem den ein eine einer einem einen ist war sind und oder aber auch nur noch schon als am im in an auf aus bei mit nach seit von vom zu zum zur es sich wie so dann dort hier nicht kein keine laut tag datum jahr monat karte',
  fr: 'le la les l un une des du de d au aux et ou mais aussi est sont etait a en dans sur par pour avec il elle ce cette ces que qui ne pas date jour mois carte',
  es: 'el la los las un una unos unas y o pero de del al en por para con es era son fue se lo le su que no ya fecha dia mes ano carta',
  pt: 'o a os as um uma e ou mas de do da dos das em no na nos nas por pelo pela para com foi era sao que se nao ja data dia mes ano carta',
  it: 'il lo la i gli le l un uno una e o ma di del della dei da dal in nel nella su sul per con era sono si che non gia data giorno mese anno carta',
  nl: 'de het een en of maar van in op aan uit bij met voor is was zijn er dat die niet ook nog al datum dag maand jaar kaart',
  fi: 'on oli ja tai mutta se ne tama joka myos vain jo ei kun paiva vuosi kuukausi kortti',
  sv: 'en ett den det de och eller men i pa av till fran for med ar var som inte ocksa bara redan datum dag kort',
  da: 'en et den det de og eller men i pa af til fra for med er var som ikke ogsa kun allerede dato dag kort',
  pl: 'i a lub ale w na z ze do od po o jest byl byla to ten ta te nie tez juz data dzien rok karta r roku',
  cs: 'a i nebo ale v ve na z ze do od po o je byl byla to ten ta ty ne take uz datum den rok karta',
};

/** Words of a heading or a remark that states how days are written in the sheet. */
export const DAY_FIRST_HABIT =
  /\b(?:d(?:ay)?s? ?(?:first|before month|[-/.] ?m(?:onths?)?)|dd? ?[-/.] ?mm?(?: ?[-/.] ?y{2,4})?|d ?[-/.] ?m(?: ?[-/.] ?y)|day,? month,? year|day then month|tag ?[-/.] ?monat|jour ?[-/.] ?mois|dia ?[-/.] ?m[eê]s|día ?[-/.] ?mes|giorno ?[-/.] ?mese|european (?:date|order|style|format|way)|tt\.mm\.)/iu;
/** The same for the month before the day. */
export const MONTH_FIRST_HABIT =
  /\b(?:months? ?(?:first|before day|[-/.] ?d(?:ays?)?)|mm? ?[-/.] ?dd?(?: ?[-/.] ?y{2,4})?|m ?[-/.] ?d(?: ?[-/.] ?y)|month,? day,? year|month then day|(?:american|us|u\.s\.) (?:date|order|style|format|way)|mois ?[-/.] ?jour|monat ?[-/.] ?tag)/iu;
