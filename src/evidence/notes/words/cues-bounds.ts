import type { PhraseRow } from '../phrases.ts';

/** Words of a sighting: out by then, the property `seen-by`. Those that must touch the date: `BY`. */
export const SEEN: PhraseRow = {
  en: 'at the latest|at latest|or earlier|or before|latest|seen|first seen|seen by|seen on|seen in shops|seen in stores|seen in the shops|seen in|seen at|saw|spotted|spotted in|sighted|sighting|sightings|first sighting|earliest sighting|earliest copy|earliest receipt|earliest photo|earliest sale|bought|purchased|purchase|i bought|photographed|photo|photo dated|photo from|photo of|picture dated|picture taken|snapshot dated|receipt|receipt dated|dated receipt|receipt of|receipt from|invoice dated|till receipt|sales slip|sales slip dated|postmark|postmarked|post mark|stamped|date stamp|found|had it by|had one by|owned|got it|got mine|got one|got my copy|pulled|opened|traded|already out|already in shops|already in stores|already on sale|already sold|already available|already listed|already had|reviewed|in hand|observed|turned up|on a photo|video of|unboxed|unboxing|school photo|diary|wrote in my diary|shown at|displayed at|displayed|exhibited|reported seen|listed as available|in stock|sold to me|given to me|my copy',
  de: 'spätestens|oder früher|gesehen|gesichtet|zuerst gesehen|erstmals gesehen|gekauft|kaufbeleg|kassenbon|kassenzettel|quittung|beleg vom|rechnung vom|foto|foto vom|fotografiert|poststempel|abgestempelt|bereits erhältlich|schon erhältlich|schon im handel|bereits im handel|gefunden|getauscht|bekommen|erhalten am|gezogen|aufgetaucht',
  fr: 'au plus tard|ou avant|vu|vue|vus|aperçu|aperçue|acheté|achetée|achat|ticket de caisse|ticket|reçu|facture du|photo|photo du|photographié|photographiée|cachet de la poste|tampon|déjà en vente|déjà sorti|déjà disponible|trouvé|trouvée|échangé|repéré|repérée',
  es: 'a más tardar|como muy tarde|o antes|visto|vista|vistos|comprado|comprada|compré|compra|recibo|ticket|factura del|foto|foto del|fotografiado|fotografiada|matasellos|ya a la venta|ya disponible|encontrado|encontrada|avistado|lo vi|la vi',
  pt: 'no máximo|no mais tardar|o mais tardar|ou antes|visto|vista|vistos|comprado|comprada|comprei|compra|recibo|nota fiscal|cupom fiscal|foto|foto de|fotografado|fotografada|carimbo|já à venda|já disponível|encontrado|encontrada|achei|avistado',
  it: 'al più tardi|o prima|visto|vista|visti|avvistato|avvistata|comprato|comprata|acquistato|acquistata|acquisto|scontrino|ricevuta|fattura del|foto|foto del|fotografato|fotografata|timbro postale|già in vendita|già disponibile|trovato|trovata|già uscito',
  nl: 'gezien|gespot|gekocht|aankoop|kassabon|bon|factuur van|foto|foto van|gefotografeerd|poststempel|al te koop|al verkrijgbaar|gevonden',
  fi: 'viimeistään|mennessä|tai aiemmin|nähty|nähtiin|näin|ostettu|ostin|ostos|kuitti|kassakuitti|lasku päivätty|valokuva|kuva|kuvattu|valokuvattu|postileima|jo myynnissä|jo kaupoissa|löytyi|löydetty|havaittu|havainto|bongattu',
  sv: 'sedd|sett|sågs|köpt|köpte|köp|kvitto|faktura|foto|foto från|fotograferad|fotograferat|poststämpel|poststämplad|redan till salu|redan ute|hittad|hittades|bytt',
  da: 'set i|set den|blev set|er set|først set|købt|købte|kvittering|bon|faktura|foto|foto fra|fotograferet|poststempel|allerede til salg|fundet|byttet',
  nb: 'sett|kjøpt|kjøpte|kvittering|faktura|foto|foto fra|fotografert|poststempel|allerede til salgs|funnet|byttet',
  pl: 'widziano|widziany|widziana|widziałem|kupiono|kupiony|kupiona|kupiłem|kupiłam|zakup|paragon|rachunek|faktura z|zdjęcie|zdjęcie z|fotografia|sfotografowano|stempel pocztowy|już w sprzedaży|znaleziono|znaleziony',
  cs: 'viděno|viděna|viděn|viděl jsem|koupeno|koupena|koupen|koupil jsem|nákup|účtenka|paragon|faktura z|foto|fotografie|vyfoceno|razítko|již v prodeji|už v prodeji|nalezeno',
  hu: 'előtt|legkésőbb|látták|láttam|vásárolva|vettem|vásároltam|blokk|nyugta|fotó|fénykép|postabélyegző|már kapható',
  ru: 'видели|видел|замечена|замечен|куплена|куплен|купил|чек|фото|сфотографирована|уже в продаже|штемпель',
  ja: 'までに|以前|より前|目撃|確認|購入|買った|レシート|領収書|写真|撮影|消印|見た|入手',
  ko: '이전|까지는|목격|구입|구매|영수증|사진|촬영|확인|발견|소인',
  zh: '之前|以前|看到|见到|購買|购买|收据|收據|照片|拍摄|发现|發現|邮戳',
};

/** Words that touch the date and say that it was out by then: `seen-by`. */
export const BY: PhraseRow = {
  en: '<|≤|not after|never after|by|by about|no later than|not later than|before|prior to|on or before|already by|up to and including|by the|by around|before the end of|by the end of|by end of|by late|by early|by mid|some time before|sometime before|well before',
  de: 'spätestens am|spätestens im|vor|vor dem|vor ende|noch vor',
  fr: 'au plus tard le|au plus tard en|avant|avant le|avant la fin de|avant fin',
  es: 'antes de|antes del|antes de finales de',
  pt: 'antes de|antes do|o mais tardar em',
  it: "prima di|prima del|prima dell '|entro|entro il|entro la fine di|al più tardi",
  nl: 'voor|vóór|uiterlijk|ten laatste|niet later dan',
  fi: 'ennen',
  sv: 'senast|före|innan|senast i',
  da: 'senest|før|inden|senest i',
  nb: 'senest|før|innen|innan',
  pl: 'przed|najpóźniej|najpóźniej w|nie później niż|przed końcem',
  cs: 'před|nejpozději|nejpozději v|nejpozději do',
  ru: 'не позднее|до конца|перед',
  ja: '前',
  ko: '전',
  zh: '前',
};

/** Words of a first possible day: `not-before`. */
export const NOT_BEFORE: PhraseRow = {
  en: "not _ before|didn ' t _ before|wasn ' t _ before|hadn ' t _ before|never _ before|can ' t _ before|cannot _ before|couldn ' t _ before|none before|wasn ' t in the shops|wasn ' t in shops|wasn ' t in stores|wasn ' t in the stores|was not in shops|not yet in the shops|not yet in the stores|wasn ' t in the shops|wasn ' t in shops|wasn ' t in stores|was not in shops|not yet in the shops|not yet in the stores|or after|onwards|not before|not out before|not earlier than|no earlier than|earliest|at the earliest|not yet out|not out yet|not yet out on|not out|wasn ' t out|was not out|not yet released|not released|not yet in shops|not yet in stores|not in shops|not in stores|not yet on sale|not on sale|not yet available|not available|unreleased|still not out|still unreleased|still not released|still not on sale|still not in shops|still not in stores|still not available|still nothing|still no sign|no sign of it|no sign|hadn ' t appeared|hadn ' t come out|had not come out|hadn ' t arrived|not arrived|not yet arrived|had not appeared|not seen|not yet seen|not until|not out until|not released until|not on sale until|didn ' t come out until|did not come out until|didn ' t _ until|wasn ' t _ until|not _ until|no copies before|never before|only after|nothing yet|nowhere to be found|nowhere to be seen|not yet|isn ' t out",
  de: 'nicht _ vor|kein _ vor|oder später|nicht vor|nicht vor dem|frühestens|frühestens am|frühestens im|noch nicht erschienen|noch nicht erhältlich|noch nicht im handel|noch nicht da|noch nicht|erst nach|erst nach dem',
  fr: 'pas _ avant|pas _ avant le|ou après|pas avant|pas avant le|au plus tôt|pas encore sorti|pas encore sortie|pas encore en vente|pas encore disponible|pas encore paru|pas encore|toujours pas sorti|toujours pas en vente|toujours pas',
  es: 'no _ antes de|no _ antes del|o después|no antes de|no antes del|como muy pronto|aún no|todavía no|aún no había salido|todavía no había salido|aún no estaba a la venta|todavía no a la venta|no antes',
  pt: 'não _ antes de|não _ antes do|ou depois|não antes de|não antes do|ainda não|ainda não tinha saído|ainda não à venda|ainda não lançado|no mínimo|não antes',
  it: 'non _ prima di|non _ prima del|o dopo|non prima di|non prima del|al più presto|non ancora|non ancora uscito|non ancora uscita|non ancora in vendita|ancora non uscito',
  nl: 'niet _ voor|niet _ vóór|niet voor|niet vóór|op zijn vroegst|nog niet|nog niet verschenen|nog niet te koop|nog niet uit',
  fi: 'ei _ ennen|jälkeen|tai myöhemmin|ei ennen|aikaisintaan|ei vielä|ei vielä myynnissä|ei vielä kaupoissa|ei vielä ilmestynyt|ei ollut vielä',
  sv: 'inte _ före|inte _ förrän|inte förrän|inte före|inte innan|tidigast|ännu inte|inte ännu|ännu inte ute|ännu inte till salu|inte ute än|ännu ej|ej före',
  da: 'ikke _ før|ikke før|tidligst|endnu ikke|endnu ikke ude|endnu ikke til salg|ikke udkommet endnu',
  nb: 'ikke _ før|ikke før|tidligst|ennå ikke|enda ikke|ikke ute ennå|ikke i salg ennå',
  pl: 'nie _ przed|nie przed|nie wcześniej niż|najwcześniej|jeszcze nie|jeszcze nie wydana|jeszcze nie w sprzedaży|jeszcze niewydana',
  cs: 'ne před|ne dříve než|nejdříve|ještě ne|ještě nevyšlo|ještě nevyšla|ještě není v prodeji|dosud nevyšlo',
  hu: 'után|nem előbb|legkorábban|még nem jelent meg|még nem',
  ru: 'не раньше|ещё не вышла|еще не вышла|ещё не|еще не',
  ja: '以降|より後|未発売|まだ|以降|より後|発売前|発売されていない',
  ko: '이후|이후|아직|미발매|미출시|아직 안',
  zh: '之后|之後|以后|以後|之后|之後|以后|以後|尚未|还没|還沒',
};

/** Words that touch the date and say that it came out on or after it. */
export const AFTER: PhraseRow = {
  en: '>|≥|after|later than|on or after|any time after|some time after|sometime after|from _ onwards|not before|only after',
  de: 'nach|nach dem|nach ende',
  fr: 'après|après le|après la',
  es: 'después de|después del|tras|posterior a',
  pt: 'depois de|depois do|após|após o|posterior a',
  it: 'dopo|dopo il|successivo al|successiva al',
  nl: 'pas na|na de',
  sv: 'efter',
  da: 'efter',
  nb: 'etter',
  pl: 'po',
  cs: 'po',
  ru: 'после',
};

/** Words of a list that has the like but not this one: `unlisted-on`. */
export const UNLISTED: PhraseRow = {
  en: "wasn ' t in _ yet|wasn ' t on _ yet|isn ' t in|isn ' t on the|wasn ' t in the|wasn ' t on the|was not in the|was not on the|not yet in the|not yet on the|not listed|not yet listed|not listed yet|unlisted|isn ' t listed|wasn ' t listed|was not listed|not on the list|not in the list|not on the page|not on the checklist|not in the checklist|not on _ list|not on _ checklist|not on _ page|not in _ list|not in _ catalogue|not in _ catalog|not in _ checklist|not in the catalogue|not in the catalog|doesn ' t list|does not list|didn ' t list|did not list|don ' t list|doesn ' t have it|does not have it|doesn ' t mention|does not mention|missing|missing on|missing from|still missing|still missing on|still missing from|still not listed|absent|absent from|still absent|absent on|omitted|omits|leaves it out|lacks it|lacks|no entry|no listing|no mention|not included|not mentioned|still without|without it|still unlisted|left out",
  de: 'fehlt|fehlt in|fehlt im|fehlt noch|fehlte|fehlte noch|nicht gelistet|nicht aufgeführt|noch nicht aufgeführt|noch nicht gelistet|nicht in der liste|nicht im katalog|nicht verzeichnet|nicht enthalten',
  fr: "absent|absente|absent de|absente de|absent du|absente du|pas listé|pas listée|non listé|non listée|pas dans la liste|pas au catalogue|ne figure pas|manque|manquait|manquant|toujours absent|toujours absente|pas encore listé|pas encore listée|n ' y est pas",
  es: 'no listado|no listada|no aparece|no aparecía|no figura|no figuraba|falta|faltaba|ausente|no está en la lista|sin listar|aún no figura|no consta',
  pt: 'não listado|não listada|não consta|não constava|não aparece|falta|faltava|faltando|ausente|fora da lista|ainda não consta|não figura|não está na lista',
  it: 'non elencato|non elencata|non compare|non compariva|non figura|non presente|manca|mancava|mancante|assente|non in lista|non in elenco|non nel catalogo',
  nl: 'niet vermeld|niet in de lijst|ontbreekt|ontbrak|ontbreekt nog|ontbreekt in|niet opgenomen|staat niet in|nog niet vermeld',
  fi: 'puuttuu|puuttui|puuttuu vielä|ei luettelossa|ei listalla|ei listattu|ei mainita|puuttuva',
  sv: 'saknas|saknades|saknas i|inte listad|inte med|ej med|ej listad|saknas ännu|inte upptagen|ännu inte listad',
  da: 'mangler|manglede|mangler i|ikke på listen|ikke med|ikke opført|endnu ikke på listen',
  nb: 'mangler|manglet|mangler i|ikke på listen|ikke med|ikke oppført',
  pl: 'brak|brakuje|nie ma na liście|nieobecna|nieobecny|nie figuruje|nie wymieniono|brak na liście|brak w|nie ma w',
  cs: 'chybí|chyběla|chybělo|není v seznamu|neuvedeno|neuvedena|není uvedena|není na seznamu',
  hu: 'hiányzik|nem szerepel|nincs a listán',
  ru: 'отсутствует|нет в списке|не указана|не значится',
  ja: '未掲載|記載なし|掲載なし|載っていない|リストになし|未収録',
  ko: '미등재|목록에 없음|누락|없음|빠져',
  zh: '未列出|未收录|未收錄|缺失|没有列出',
};
