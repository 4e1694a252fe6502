/**
 * Japanese eras with the year before their first one; from Meiji on the calendar is the Gregorian
 * one (1 January 1873). Years from memory of the published list, which the tests repeat.
 */
export const ERAS: Readonly<Record<string, number>> = {
  明治: 1867,
  大正: 1911,
  昭和: 1925,
  平成: 1988,
  令和: 2018,
  meiji: 1867,
  taisho: 1911,
  showa: 1925,
  heisei: 1988,
  reiwa: 2018,
};

/** The signs of Chinese and Japanese numbers below a hundred. */
export const HAN_DIGITS: Readonly<Record<string, number>> = {
  〇: 0,
  零: 0,
  一: 1,
  二: 2,
  三: 3,
  四: 4,
  五: 5,
  六: 6,
  七: 7,
  八: 8,
  九: 9,
  十: 10,
  元: 1,
};
