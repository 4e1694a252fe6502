/** Names of the days of the week, Monday first, a language a row. Names from Unicode CLDR. */
export const WEEKDAY_NAMES: Readonly<Record<string, string>> = {
  en: 'monday/mon tuesday/tues/tue wednesday/wed thursday/thurs/thur/thu friday/fri saturday/sat sunday/sun',
  de: 'montag/mo dienstag/di mittwoch/mi donnerstag freitag/fr samstag/sonnabend sonntag',
  fr: 'lundi/lun mardi mercredi jeudi/jeu vendredi/ven samedi/sam dimanche/dim',
  es: 'lunes martes miercoles jueves viernes sabado domingo',
  pt: 'segunda-feira terca-feira quarta-feira quinta-feira sexta-feira sabado domingo',
  it: 'lunedi martedi mercoledi giovedi venerdi sabato domenica',
  nl: 'maandag dinsdag woensdag donderdag vrijdag zaterdag zondag',
  fi: 'maanantai* tiistai* keskiviikko* torstai* perjantai* lauantai* sunnuntai*',
  sv: 'mandag tisdag onsdag torsdag fredag lordag sondag',
  da: 'mandag tirsdag onsdag torsdag fredag lørdag søndag',
  pl: 'poniedzialek wtorek sroda czwartek piatek sobota niedziela',
  cs: 'pondeli utery streda ctvrtek patek sobota nedele',
  ja: '月曜日/月曜 火曜日/火曜 水曜日/水曜 木曜日/木曜 金曜日/金曜 土曜日/土曜 日曜日/日曜',
  ko: '월요일 화요일 수요일 목요일 금요일 토요일 일요일',
};
