/** A cue as a reader of WebVTT finds it. */
export interface ReadCue {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const TIME = /^(?:(\d{2,}):)?([0-5]\d):([0-5]\d)\.(\d{3})$/;

/**
 * Reads a WebVTT file by the parser rules of the specification (W3C, WebVTT: The Web Video Text
 * Tracks Format, Candidate Recommendation 4 April 2019, sections 4.1 and 6.1), and throws where a
 * file does not conform; written apart from the writer.
 */
export function readWebvtt(file: string): readonly ReadCue[] {
  const text = file.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  if (text.includes('\u0000')) throw new Error('a NUL is not allowed');
  const [head = '', ...blocks] = text.split(/\n{2,}/);
  if (!/^WEBVTT(?:[ \t][^\n]*)?(?:\n|$)/.test(head)) throw new Error(`no signature: ${head}`);
  if (head.includes('-->')) throw new Error('the header holds an arrow');
  const cues = blocks.filter((block) => block.trim() !== '').flatMap((block) => readBlock(block));
  for (const [i, cue] of cues.entries()) {
    if (cue.from < (cues[i - 1]?.from ?? 0))
      throw new Error(`${cue.id} begins before its forerunner`);
  }
  if (new Set(cues.map(({ id }) => id)).size < cues.length) throw new Error('two cues of one name');
  return cues;
}

function readBlock(block: string): ReadCue[] {
  const lines = block.replace(/\n$/, '').split('\n');
  if (/^(NOTE|STYLE|REGION)(\s|$)/.test(lines[0]!)) return [];
  const id = lines[0]!.includes('-->') ? '' : lines.shift()!;
  const [start = '', arrow, end = '', ...settings] = (lines.shift() ?? '').split(/[ \t]+/);
  if (arrow !== '-->') throw new Error(`no timings in ${block}`);
  if (settings.length > 0) throw new Error('settings are not expected');
  const [from, to] = [secondsOf(start), secondsOf(end)];
  if (!(to > from)) throw new Error(`${id} ends at or before its begin`);
  const text = lines.join('\n');
  if (text === '' || text.includes('-->')) throw new Error(`${id} has no text, or an arrow in it`);
  return [{ id, from, to, text: unescaped(text) }];
}

function secondsOf(time: string): number {
  const [, hours = '0', minutes, seconds, thousandths] = TIME.exec(time) ?? [];
  if (minutes === undefined) throw new Error(`no time: ${time}`);
  const whole = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
  return whole + Number(thousandths) / 1000;
}

/** Cue text of section 4.2.2: a bare `<` begins a tag and a bare `&` a reference. */
function unescaped(text: string): string {
  if (text.includes('<')) throw new Error(`a tag in ${text}`);
  return text.replace(/&(\w*;?)/g, (whole, name) => {
    const letter = { 'amp;': '&', 'lt;': '<', 'gt;': '>' }[String(name)];
    if (letter === undefined) throw new Error(`no reference: ${whole}`);
    return letter;
  });
}
