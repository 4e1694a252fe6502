import { describe, expect, it } from 'vitest';
import { answerTo, inputPath } from './answer.ts';

describe('a wrong call ends with 2, says why on standard error and prints nothing', () => {
  it.each([
    [[], 'Usage: printlore'],
    [['chronicle'], "unknown command 'chronicle'"],
    [['check'], "missing required argument 'dossier'"],
    [['check', inputPath('nowhere')], 'there is no such file or folder'],
    [['check', inputPath('notes')], 'there is no printings.csv in it'],
    [['check', inputPath('notes/sheet.txt')], 'is not a folder'],
    [['check', inputPath('quiet'), '--jsn'], "unknown option '--jsn'"],
    [['check', inputPath('quiet'), 'more'], 'too many arguments'],
    [['date', inputPath('nowhere')], 'there is no such file or folder'],
    [['date', inputPath('quiet'), '--seed', 'seven'], 'A whole number'],
    [['date', inputPath('quiet'), '--seed', '1.5'], 'A whole number'],
    [['date', inputPath('quiet'), '--seed', '-1'], 'A whole number'],
    [['date', inputPath('quiet'), '--seed'], 'argument missing'],
    [['notes', inputPath('nowhere.txt')], 'there is no such file or folder'],
    [['notes', inputPath('quiet')], 'cannot be opened'],
    [['notes', inputPath('notes/sheet.txt'), inputPath('nowhere')], 'there is no such'],
    [['screen', inputPath('nowhere.jpg')], 'nowhere.jpg: found no such file; expected a picture'],
    [['screen', inputPath('notes/sheet.txt')], 'found a text'],
    [['screen', 'a.jpg', '--dpi', 'many'], 'Dots an inch'],
    [['open', inputPath('notes')], 'there is no printings.csv in it'],
    [['relief', inputPath('nowhere.json')], 'there is no such file'],
    [['relief', inputPath('notes/sheet.txt')], 'is no JSON'],
    [['relief', inputPath('quiet/dossier.json')], '"pictures" must be a list'],
    [['examine'], 'A picture of the front is wanted'],
    [['examine', inputPath('nowhere.jpg')], 'no such file'],
    [['examine', inputPath('notes/sheet.txt')], 'found a text'],
    [['examine', inputPath('notes/sheet.txt'), '--card', '63'], 'two sides of 10 to 500 mm'],
    [['examine', inputPath('notes/sheet.txt'), '--card', '0x88'], 'two sides of 10 to 500 mm'],
    [['examine', '--jobs', inputPath('nowhere.jsonl')], 'there is no such file'],
    [['examine', '--jobs', inputPath('notes')], 'is no file of jobs'],
    [['examine', 'front.jpg', '--jobs', inputPath('notes/sheet.txt')], 'takes the place'],
    [['open', '--port', '70000'], 'A whole number'],
  ])('%j', async (words, why) => {
    const { exit, out, err } = await answerTo(words);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(why);
  });
});

describe('help and version end with 0', () => {
  it.each([[['--help']], [['date', '--help']], [['--version']]])('%j', async (words) => {
    const { exit, out, err } = await answerTo(words);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).not.toBe('');
  });
});
