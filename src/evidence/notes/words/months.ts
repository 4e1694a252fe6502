/**
 * Names and abbreviations of the twelve months, a language a row; names of one month are separated
 * by `/`, accents may be left out, `*` stands for any ending. Names from Unicode CLDR, abbreviations
 * and case endings as collectors write them (common practice, no source).
 */
export const MONTH_NAMES: Readonly<Record<string, string>> = {
  en: 'january/jan february/feb/febr march/mar april/apr may june/jun july/jul august/aug september/sep/sept october/oct november/nov december/dec/christmas/xmas',
  de: 'januar/janner/jan februar/feber/feb marz/maerz/mrz april/apr mai juni/jun juli/jul august/aug september/sept/sep oktober/okt november/nov dezember/dez/weihnachten',
  fr: 'janvier/janv fevrier/fevr/fev mars avril/avr mai juin juillet/juil aout septembre/sept octobre/oct novembre/nov decembre/dec/noel',
  es: 'enero/ene febrero/feb marzo/mar abril/abr mayo/may junio/jun julio/jul agosto/ago septiembre/setiembre/sept/sep octubre/oct noviembre/nov diciembre/dic/navidad*',
  pt: 'janeiro/jan fevereiro/fev marco/mar abril/abr maio/mai junho/jun julho/jul agosto/ago setembro/set outubro/out novembro/nov dezembro/dez/natal',
  it: 'gennaio/genn/gen febbraio/febbr/feb marzo/mar aprile/apr maggio/magg/mag giugno/giu luglio/lug agosto/ago settembre/sett/set ottobre/ott novembre/nov dicembre/dic/natale',
  nl: 'januari/jan februari/feb maart/mrt april/apr mei juni/jun juli/jul augustus/aug september/sept/sep oktober/okt november/nov december/dec',
  fi: 'tammikuu*/tammik/tammi helmikuu*/helmik/helmi maaliskuu*/maalisk/maalis huhtikuu*/huhtik/huhti toukokuu*/toukok/touko kesakuu*/kesak heinakuu*/heinak elokuu*/elok syyskuu*/syysk lokakuu*/lokak/loka marraskuu*/marrask/marras joulukuu*/jouluk/joulu/jouluna/jouluksi',
  sv: 'januari/jan februari/febr/feb mars april/apr maj juni/jun juli/jul augusti/aug september/sept/sep oktober/okt november/nov december/dec',
  da: 'januar/jan februar/feb marts april/apr maj juni/jun juli/jul august/aug september/sept/sep oktober/okt november/nov december/dec',
  nb: 'januar/jan februar/feb mars april/apr mai juni/jun juli/jul august/aug september/sept/sep oktober/okt november/nov desember/des',
  pl: 'stycze*/stycznia/sty luty/lutego/lutym/lut marzec/marca/marcu kwiecien/kwietnia/kwietniu/kwi maj/maja/maju czerwiec/czerwca/czerwcu/cze lipiec/lipca/lipcu/lip sierpien/sierpnia/sierpniu wrzesien/wrzesnia/wrzesniu/wrz pazdziernik*/paz listopad/listopada/listopadzie/lis grudzien/grudnia/grudniu/gru',
  cs: 'leden/ledna/lednu/led unor/unora/unoru brezen/brezna/breznu/brez duben/dubna/dubnu kveten/kvetna/kvetnu cerven/cervna/cervnu cervenec/cervence/cervenci srpen/srpna/srpnu zari rijen/rijna/rijnu listopad/listopadu prosinec/prosince/prosinci',
  sk: 'januar/januara/januari februar/februara/februari marec/marca/marci april/aprila/aprili maj/maja/maji jun/juna/juni jul/jula/juli august/augusta/auguste september/septembra/septembri oktober/oktobra/oktobri november/novembra/novembri december/decembra/decembri',
  hu: 'januar*/jan februar*/febr marcius*/marc aprilis*/apr majus*/maj junius*/jun julius*/jul augusztus*/aug szeptember*/szept oktober*/okt november*/nov december*/dec',
  ro: 'ianuarie/ian februarie/feb martie/mart aprilie/apr mai iunie/iun iulie/iul august/aug septembrie/sept octombrie/oct noiembrie/nov decembrie/dec',
  tr: 'ocak/ocakta subat/subatta mart/martta nisan/nisanda mayis/mayista haziran/haziranda temmuz/temmuzda agustos/agustosta eylul/eylulde ekim/ekimde kasim/kasimda aralik/aralikta',
  hr: 'sijecanj/sijecnja veljaca/veljace ozujak/ozujka travanj/travnja svibanj/svibnja lipanj/lipnja srpanj/srpnja kolovoz/kolovoza rujan/rujna listopada studeni/studenog prosinac/prosinca',
  ru: 'январь/января/январе/янв февраль/февраля/феврале/фев март/марта/марте апрель/апреля/апреле/апр май/мая/мае июнь/июня/июне июль/июля/июле август/августа/августе/авг сентябрь/сентября/сентябре/сен октябрь/октября/октябре/окт ноябрь/ноября/ноябре/ноя декабрь/декабря/декабре/дек',
  ca: 'gener febrer marc abril maig juny juliol agost setembre octubre novembre desembre',
};

/**
 * Words that are a month in one language and an everyday word in another: read as a month only
 * after the day, after a particle such as `de`, or glued to the year.
 */
export const WEAK_MONTHS: readonly string[] = [
  'set',
  'out',
  'ago',
  'mag',
  'gen',
  'lis',
  'lip',
  'sie',
  'sty',
  'gru',
  'led',
  'may',
  'mart',
  'ocak',
  'des',
  'marc',
  'elok',
  'ene',
  'lut',
  'cze',
  'helmi',
  'loka',
  'touko',
];
