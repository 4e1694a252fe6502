/** How the page to read from looks: a dark room, one line in full light, the others dimmed. */
export const STYLE = `
:root { color-scheme: dark; }
* { box-sizing: border-box; }
body { margin: 0; background: #0c0d0e; color: #ecedea; font-family: Archivo, "Helvetica Neue", Arial, "Noto Sans JP", "Noto Sans KR", sans-serif; font-variant-numeric: tabular-nums; }
header { position: sticky; top: 0; z-index: 1; background: #0c0d0e; border-bottom: 1px solid #2e3233; padding: 8px clamp(12px, 4vw, 48px); display: flex; flex-wrap: wrap; gap: 4px 6px; align-items: center; font-size: 14px; }
header h1 { font: 400 18px/24px Newsreader, Georgia, serif; margin: 0 auto 0 0; }
header output { min-width: 4.5em; text-align: right; }
button { font: inherit; color: inherit; background: none; border: 1px solid #757b7e; padding: 4px 8px; min-height: 30px; cursor: pointer; }
button[aria-pressed="true"] { background: #ecedea; color: #0c0d0e; }
#record[aria-pressed="true"] { background: #ff5fae; border-color: #ff5fae; color: #0c0d0e; }
button:focus-visible { outline: 2px solid #ffd400; outline-offset: 2px; }
kbd { font: inherit; opacity: 0.75; margin-left: 4px; }
main { max-width: 1200px; margin: 0 auto; padding: 38vh clamp(16px, 5vw, 64px) 60vh; }
section + section { margin-top: 1.6em; }
h2 { font: 400 22px/30px Newsreader, Georgia, serif; color: #a8adaf; margin: 0 0 12px; }
h2 + p.names { margin: 0 0 16px; color: #63cdee; font-size: 20px; }
[data-line] { margin: 0 0 0.55em; font: 400 clamp(32px, 5.4vw, 68px)/1.22 Newsreader, Georgia, "Noto Sans JP", "Noto Sans KR", serif; color: #757b7e; cursor: pointer; text-wrap: pretty; overflow-wrap: anywhere; }
[data-line] small { display: none; font: 18px/26px Archivo, Arial, sans-serif; color: #a8adaf; margin-top: 6px; }
[data-line].now { color: #fcfcfa; border-left: 6px solid #ffd400; margin-left: -24px; padding-left: 18px; }
[data-line].now small { display: block; }
.held [data-line].now { border-left-color: #ff5fae; }
.mirrored main { transform: scaleX(-1); }
@media (max-width: 600px) { [data-line].now { margin-left: -12px; padding-left: 6px; } header h1 { width: 100%; } kbd { display: none; } }
@media print { :root { color-scheme: light; } body { background: #fff; color: #000; } header { display: none; } main { padding: 0; } [data-line], [data-line].now { color: #000; border: 0; margin: 0 0 0.4em; padding: 0; font-size: 20px; } }
`;
