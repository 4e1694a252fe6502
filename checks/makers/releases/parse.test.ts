import { describe, expect, it } from 'vitest';
import { entries, iso, matches, uploads } from './parse.ts';

describe('reading release days out of changelogs', () => {
  it('writes English months as numbers', () => {
    expect(iso('2022', 'May', '7')).toBe('2022-05-07');
    expect(iso('2022', 'December', '31')).toBe('2022-12-31');
  });

  it('takes the first upload of an upstream version', () => {
    const text = [
      'box (1:2.1-2) unstable; urgency=low',
      ' -- A <a@b>  Tue, 05 Mar 2019 10:00:00 +0100',
      'box (1:2.1-1) unstable; urgency=low',
      ' -- A <a@b>  Fri,  1 Mar 2019 10:00:00 +0100',
    ].join('\n');
    expect([...uploads(text, (v) => v.replace(/-.*/, ''))]).toEqual([['2.1', '2019-03-01']]);
  });

  it('takes the earliest entry that names a version, in a file that begins with the newest', () => {
    const text = '2.1  2019-03-05\n- still with data 7b\n2.0  2019-03-01\n- data 7b\n';
    const found = entries(text, /^[\d.]+ +(?<day>\d{4}-\d\d-\d\d)/, /data (?<version>\d[a-z])/);
    expect([...found]).toEqual([['7b', '2019-03-01']]);
  });

  it('keeps the first of two headings for one version', () => {
    const text = '## 2019.03.05, Version 2\n## 2018.01.01, Version 2\n';
    expect([...matches(text, /^## (?<day>[\d.]+), Version (?<version>\d)/gm)]).toEqual([
      ['2', '2019-03-05'],
    ]);
  });
});
