import { sayDay, sayWindow } from './days.ts';

const SEASONS: Record<string, string> = {
  '21': 'spring',
  '22': 'summer',
  '23': 'autumn',
  '24': 'winter',
};

/**
 * A date in EDTF as a person says it: `1993-09~` is "about September 1993". What it has no words
 * for comes back as written; whether it is valid is for `parseEdtf` to say.
 */
export function sayEdtf(text: string): string {
  const value = text.trim();
  if (/^[[{].*[\]}]$/.test(value)) {
    const all = value.startsWith('{');
    return value
      .slice(1, -1)
      .split(',')
      .map(sayPart)
      .join(all ? ' and ' : ' or ');
  }
  const [from, to, ...rest] = value.split('/');
  if (from === undefined || to === undefined || rest.length > 0) return sayPart(value);
  if (from === '' || from === '..')
    return to === '' || to === '..' ? 'any day' : `until ${sayPart(to)}`;
  if (to === '' || to === '..') return `from ${sayPart(from)} on`;
  return `between ${sayPart(from)} and ${sayPart(to)}`;
}

function sayPart(part: string): string {
  const text = part.trim();
  if (text.startsWith('..')) return `until ${sayPart(text.slice(2))}`;
  if (text.endsWith('..')) return `from ${sayPart(text.slice(0, -2))} on`;
  const plain = text.replace(/[~?%]/g, '');
  const said = sayPlain(plain);
  const sign = (/[~?%]/.exec(text) ?? [''])[0];
  if (sign === '~') return `about ${said}`;
  if (sign === '?') return `${said}, perhaps`;
  return sign === '%' ? `perhaps about ${said}` : said;
}

function sayPlain(plain: string): string {
  const [, year = '', month, day] =
    /^(-?[\dX]{4})(?:-([\dX]{2}))?(?:-([\dX]{2}))?$/.exec(plain) ?? [];
  if (year === '') return plain;
  if (year.includes('X')) return sayVagueYear(year);
  if (month === undefined || month === 'XX') return day && day !== 'XX' ? plain : year;
  if (SEASONS[month]) return `${SEASONS[month]} ${year}`;
  if (!/^(0[1-9]|1[0-2])$/.test(month)) return plain;
  if (day === undefined || day === 'XX') {
    return sayWindow(`${year}-${month}-01`, `${year}-${month}-28`, false).replace(/^1 to 28 /, '');
  }
  return /^\d\d$/.test(day) ? sayDay(plain) : plain;
}

function sayVagueYear(year: string): string {
  if (/^\d{3}X$/.test(year)) return `the ${year.slice(0, 3)}0s`;
  return /^\d\dXX$/.test(year) ? `the years ${year.slice(0, 2)}00 to ${year.slice(0, 2)}99` : year;
}
