import { escaped } from '../stills/svg.ts';
import type { Line, Scene, Script } from '../types.ts';
import { BEHAVIOUR } from './behaviour.ts';
import { STYLE } from './style.ts';

/** Buttons of the page: what each does, its key, and whether it stays down. */
const BUTTONS = [
  ['record', 'Record', 'R', true],
  ['hold', 'Hold', 'space', true],
  ['back', 'Back', '←', false],
  ['next', 'Next', '→', false],
  ['note', 'Note', 'N', false],
  ['end', 'End', 'E', false],
  ['save', 'Save marks', 'D', false],
  ['pace', 'Pace', 'P', true],
  ['slower', 'Slower', '−', false],
  ['faster', 'Faster', '+', false],
  ['mirror', 'Mirror', 'M', true],
] as const;

/**
 * A page to read a script from while recording: one file that asks for nothing from anywhere, large
 * type, paced by the script's rate, with keys that hold, go on and set marks (`readMarks`).
 */
export function readingPage(script: Script): string {
  const buttons = BUTTONS.map(([id, words, key, stays]) => {
    const pressed = stays ? ` aria-pressed="${id === 'pace'}"` : '';
    const ask =
      id === 'note' ? ' data-ask="Copy, and what is seen on it: hare-1 Two specks at the top"' : '';
    return `<button type="button" id="${id}"${pressed}${ask}>${words}<kbd>${key}</kbd></button>`;
  });
  return `<!doctype html>
<html lang="${escaped(script.language)}"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(script.title)}: to read while recording</title>
<style>${STYLE}</style></head>
<body data-rate="${script.rate}">
<header><h1>${escaped(script.title)}</h1>
${buttons.join('\n')}
<span><span id="rate">${script.rate}</span> words a minute</span>
<span><span id="marks">0</span> marks</span>
<output id="time">0:00:00</output></header>
<main>${script.scenes.map(sceneOf).join('\n')}</main>
<script>${BEHAVIOUR}</script>
</body></html>
`;
}

function sceneOf({ title, names, lines }: Scene): string {
  const said = names.map(({ written, said: by }) => `${escaped(written)}: <b>${escaped(by)}</b>`);
  const how = said.length === 0 ? '' : `<p class="names">${said.join('; ')}</p>`;
  return `<section><h2>${escaped(title)}</h2>${how}${lines.map(lineOf).join('')}</section>`;
}

/** A line as it is spoken; while it is said, as it stands in captions too. */
function lineOf({ id, text, spoken, seconds }: Line): string {
  const written = text === spoken ? '' : `<small>${escaped(text)}</small>`;
  return `<p data-line="${escaped(id)}" data-seconds="${seconds.toFixed(2)}">${escaped(spoken)}${written}</p>`;
}
