/**
 * Names of languages by BCP 47 tag, in many tongues, as adjectives are used of cards. A name that
 * is a country's alone (`Brazilian`) stands in `markets.ts`.
 */
export const LANGUAGE_NAMES: Readonly<Record<string, string>> = {
  en: 'english|eng|engl .|englisch|englische|englischer|englisches|anglais|anglaise|inglés|inglesa|inglês|inglese|engels|engelse|englanti|englantilainen|englanninkielinen|engelska|engelsk|angielski|angielska|anglická|anglicky|angol|英語|영어|영어판|英文',
  de: 'german|deutsch|deutsche|deutscher|deutsches|allemand|allemande|alemán|alemana|alemão|alemã|tedesco|tedesca|duits|duitse|saksa|saksankielinen|saksalainen|tyska|tysk|niemiecki|niemiecka|německá|német|ドイツ語|독일어|德文',
  fr: 'french|französisch|französische|französischer|français|française|francés|francesa|francês|francese|frans|franse|ranska|ranskankielinen|ranskalainen|franska|fransk|francuski|francuska|francouzská|francia|フランス語|프랑스어|法文',
  es: 'spanish|spanisch|spanische|spanischer|espagnol|espagnole|español|española|espanhol|espanhola|spagnolo|spagnola|spaans|spaanse|espanja|espanjankielinen|espanjalainen|spanska|spansk|hiszpański|hiszpańska|španělská|spanyol|スペイン語|스페인어|castellano',
  pt: 'portuguese|portugiesisch|portugiesische|portugais|portugaise|portugués|portuguesa|português|portoghese|portugees|portugese|portugali|portugalinkielinen|portugisiska|portugisisk|portugalski|portugalska|portugalská|portugál|ポルトガル語|포르투갈어',
  it: 'italian|italienisch|italienische|italien|italienne|italiano|italiana|italiaans|italiaanse|italiankielinen|italialainen|italienska|italiensk|włoski|włoska|italská|olasz|イタリア語|이탈리아어',
  nl: 'dutch|niederländisch|niederländische|néerlandais|néerlandaise|neerlandés|holandês|holandesa|olandese|nederlands|nederlandse|hollanti|hollanninkielinen|nederländska|hollandsk|nederlandsk|niderlandzki|holenderski|nizozemská|holland|オランダ語|네덜란드어',
  fi: 'finnish|finnisch|finnische|finnischer|finnisches|finnois|finlandais|finlandaise|finés|finlandés|finlandesa|finlandês|finlandese|fins|finse|suomi|suomenkielinen|suomalainen|suomenkieliset|finska|finsk|fiński|fińska|finská|finn|フィンランド語|핀란드어',
  sv: 'swedish|schwedisch|schwedische|suédois|suédoise|sueco|sueca|svedese|zweeds|zweedse|ruotsi|ruotsinkielinen|ruotsalainen|svenska|svensk|szwedzki|szwedzka|švédská|svéd|スウェーデン語|스웨덴어',
  da: 'danish|dänisch|dänische|danois|danoise|danés|danesa|dinamarquês|danese|deens|deense|tanska|tanskankielinen|tanskalainen|danska|dansk|duński|duńska|dánská|dán|デンマーク語|덴마크어',
  nb: 'norwegian|norwegisch|norwegische|norvégien|norvégienne|noruego|noruega|norueguês|norvegese|noors|noorse|norja|norjankielinen|norjalainen|norska|norsk|norweski|norweska|norská|norvég|ノルウェー語|노르웨이어',
  pl: 'polish|polnisch|polnische|polonais|polonaise|polaco|polaca|polonês|polonesa|polacco|polacca|pools|poolse|puola|puolankielinen|puolalainen|polska|polsk|polski|polská|lengyel|ポーランド語|폴란드어',
  cs: 'czech|tschechisch|tschechische|tchèque|checo|checa|tcheco|tcheca|ceco|ceca|tsjechisch|tsjechische|tšekki|tšekinkielinen|tjeckiska|tjekkisk|czeski|czeska|česká|český|cseh|チェコ語|체코어',
  hu: 'hungarian|ungarisch|ungarische|hongrois|hongroise|húngaro|húngara|ungherese|hongaars|hongaarse|unkari|unkarinkielinen|ungerska|ungarsk|węgierski|węgierska|maďarská|magyar|ハンガリー語|헝가리어',
  ja: 'japanese|japanisch|japanische|japonais|japonaise|japonés|japonesa|japonês|giapponese|japans|japanse|japani|japaninkielinen|japanilainen|japanska|japansk|japoński|japońska|japonská|japán|日本語|日本語版|일본어|일본어판|日文|jpn|jap .',
  ko: 'korean|koreanisch|koreanische|coréen|coréenne|coreano|coreana|koreaans|koreaanse|koreankielinen|korealainen|koreanska|koreansk|koreański|koreańska|korejská|koreai|韓国語|韓国語版|한국어|한국어판|한글판|韩文',
  zh: 'chinese|chinesisch|chinesische|chinois|chinoise|chino|china|chinês|chinesa|cinese|chinees|chinese|kiina|kiinankielinen|kinesiska|kinesisk|chiński|chińska|čínská|kínai|中国語|중국어|中文',
  ru: 'russian|russisch|russische|russe|ruso|rusa|russo|russa|venäjä|venäjänkielinen|ryska|russisk|rosyjski|rosyjska|ruská|orosz|ロシア語|러시아어|русский|русская',
  tr: 'turkish|türkisch|türkische|turc|turque|turco|turca|turks|turkse|turkki|turkiska|tyrkisk|turecki|turecka|turecká|török|türkçe',
  el: 'greek|griechisch|griechische|grec|grecque|griego|griega|grego|grega|greco|greca|grieks|griekse|kreikka|kreikankielinen|grekiska|græsk|gresk|grecki|grecka|řecká|görög',
  he: 'hebrew|hebräisch|hébreu|hebreo|hebraico|ebraico|heprea',
  th: 'thai|thailändisch|thaï|tailandés|tailandês|tailandese|thainkielinen',
  id: 'indonesian|indonesisch|indonésien|indonesio|indonésio',
  is: 'icelandic|isländisch|islandais|islandés|islandês|islandese|ijslands|islanti|isländska|islandsk',
};
