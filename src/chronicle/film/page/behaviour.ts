/**
 * What the page to read from does, as the script that stands in it: paces the lines, keeps marks in
 * memory and hands them out as a file. It asks nothing of any network.
 */
export const BEHAVIOUR = `'use strict';
const lines = [...document.querySelectorAll('[data-line]')];
const $ = (id) => document.getElementById(id);
const marks = [];
let at = 0, held = false, paced = true, rate = 1, began = null, left = seconds(0), last = null, saved = true;
function seconds(i) { return lines[i] ? Number(lines[i].dataset.seconds) + 0.4 : 0; }
function time(ms) {
  const s = Math.max(0, ms) / 1000, pad = (n, w) => String(n).padStart(w, '0');
  return Math.floor(s / 3600) + ':' + pad(Math.floor(s / 60) % 60, 2) + ':' + pad((s % 60).toFixed(3), 6);
}
function mark(words) {
  if (began === null) return;
  marks.push(time(performance.now() - began) + ' ' + words);
  saved = false;
  $('marks').textContent = marks.length;
}
function show(say = true) {
  lines.forEach((line, i) => line.classList.toggle('now', i === at));
  lines[at].setAttribute('aria-current', 'true');
  lines.filter((_, i) => i !== at).forEach((line) => line.removeAttribute('aria-current'));
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  lines[at].scrollIntoView({ block: 'center', behavior: calm ? 'auto' : 'smooth' });
  left = seconds(at);
  if (say) mark('line ' + lines[at].dataset.line);
}
function go(step) {
  const next = Math.min(lines.length - 1, Math.max(0, at + step));
  if (next === at && step > 0) return hold(true);
  at = next;
  show();
}
function hold(on) {
  if (held === on) return;
  held = on;
  mark(on ? 'hold' : 'on');
  $('hold').setAttribute('aria-pressed', String(on));
  document.body.classList.toggle('held', on);
}
function record() {
  if (began !== null) return;
  began = performance.now();
  $('record').setAttribute('aria-pressed', 'true');
  hold(false);
  show();
}
function end() { mark('end'); hold(true); }
function clock() {
  const now = new Date(), off = -now.getTimezoneOffset(), pad = (n) => String(n).padStart(2, '0');
  const local = new Date(now.getTime() + off * 60000).toISOString().slice(0, 19);
  return local + (off < 0 ? '-' : '+') + pad(Math.floor(Math.abs(off) / 60)) + ':' + pad(Math.abs(off) % 60);
}
function note() {
  if (began === null) return;
  const moment = time(performance.now() - began), day = clock();
  hold(true);
  const said = prompt($('note').dataset.ask, '');
  const words = (said || '').trim().replace(/\\s+/g, ' ');
  if (!/^\\S+ \\S/.test(words)) return;
  marks.push(moment + ' seen ' + day + ' ' + words);
  saved = false;
  $('marks').textContent = marks.length;
}
function save() {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([marks.join('\\n') + '\\n'], { type: 'text/plain' }));
  link.download = 'marks.txt';
  link.click();
  URL.revokeObjectURL(link.href);
  saved = true;
}
function speed(by) { rate = Math.min(2, Math.max(0.5, Math.round((rate + by) * 20) / 20)); $('rate').textContent = Math.round(rate * Number(document.body.dataset.rate)); }
function pace() { paced = !paced; $('pace').setAttribute('aria-pressed', String(paced)); }
function mirror() { $('mirror').setAttribute('aria-pressed', String(document.body.classList.toggle('mirrored'))); }
const doings = { record, hold: () => hold(!held), back: () => go(-1), next: () => go(1), note, end, save, slower: () => speed(-0.05), faster: () => speed(0.05), pace, mirror };
const keys = { ' ': 'hold', ArrowRight: 'next', ArrowDown: 'next', PageDown: 'next', Enter: 'next', ArrowLeft: 'back', ArrowUp: 'back', PageUp: 'back', r: 'record', n: 'note', e: 'end', d: 'save', '-': 'slower', '+': 'faster', '=': 'faster', p: 'pace', m: 'mirror' };
addEventListener('keydown', (event) => {
  const name = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
  if (!name || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.target.tagName === 'BUTTON' && (event.key === ' ' || event.key === 'Enter')) return;
  event.preventDefault();
  doings[name]();
});
for (const button of document.querySelectorAll('button[id]')) button.addEventListener('click', () => { doings[button.id](); button.blur(); });
lines.forEach((line, i) => line.addEventListener('click', () => { at = i; show(); }));
addEventListener('beforeunload', (event) => { if (!saved) event.preventDefault(); });
function tick(now) {
  if (last !== null && began !== null && paced && !held) {
    left -= ((now - last) / 1000) * rate;
    if (left <= 0) go(1);
  }
  last = now;
  $('time').textContent = began === null ? '0:00:00' : time(performance.now() - began).slice(0, -4);
  requestAnimationFrame(tick);
}
speed(0);
show(false);
requestAnimationFrame(tick);
`;
