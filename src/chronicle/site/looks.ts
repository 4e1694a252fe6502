/** The look of the site: the printer's proof, light or dark as the reader has it, and on paper. */
export const SITE_CSS = `:root{color-scheme:light dark;--table:#c9ccce;--sheet:#fcfcfa;--ink:#141617;--second:#55595c;--frame:#3f4346;--third:#8b9093;--rule:#dfe1e0;--cyan:#0086b3;--cyan-text:#006a8f;--magenta:#c4006a;--yellow:#ffd400;--marker:#fff6c2;--sans:Archivo,"Helvetica Neue",Arial,"Noto Sans JP","Noto Sans KR",sans-serif;--serif:Newsreader,Charter,Georgia,"Noto Serif JP","Noto Serif KR",serif}
@media (prefers-color-scheme:dark){:root{--table:#0c0d0e;--sheet:#1a1c1d;--ink:#ecedea;--second:#a8adaf;--frame:#a8adaf;--third:#757b7e;--rule:#2e3233;--cyan:#3cbfe6;--cyan-text:#63cdee;--magenta:#ff5fae;--marker:#3a3510}}
*,*::before,*::after{box-sizing:border-box}
html{background:var(--table);color:var(--ink);font:15px/22px var(--sans);font-variant-numeric:tabular-nums;text-size-adjust:100%}
body{max-width:1180px;margin:0 auto;padding:0 24px 24px}
h1,h2,h3,p,ul,ol,dl,dd,figure,blockquote{margin:0;padding:0}
ul,ol{list-style:none}
h1,h2,h3{font-family:var(--serif);font-weight:400;text-wrap:balance;overflow-wrap:break-word}
h1{font-size:37px;line-height:42px}
h2{margin:40px 0 8px;font-size:23px;line-height:28px}
h3{margin:24px 0 4px;font-size:18px;line-height:25px}
:lang(ko){word-break:keep-all}
a{color:inherit;text-decoration-color:var(--third);text-underline-offset:3px}
a:hover{text-decoration-color:currentcolor}
:focus-visible{outline:2px solid var(--ink);outline-offset:2px}
.unseen,.skip:not(:focus){position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.skip:focus{position:absolute;top:8px;left:8px;padding:8px 12px;background:var(--sheet)}
.frame{display:flex;flex-wrap:wrap;align-items:center;gap:0 28px;min-height:52px;padding:6px 0}
.wordmark{font-weight:700}
.frame ul{display:flex;flex-wrap:wrap;gap:0 20px}
.frame a{display:block;padding:9px 0 7px;border-bottom:2px solid transparent;text-decoration:none}
.frame a:hover{border-color:var(--frame)}
.frame a[aria-current]{border-color:var(--ink)}
.languages{margin-left:auto}
.sheet{position:relative;padding:40px 48px 56px;background:var(--sheet);border-bottom:6px solid;border-image:linear-gradient(90deg,#0086b3 25%,#c4006a 0 50%,#ffd400 0 75%,#141617 0) 1}
.register{position:absolute;top:14px;right:14px;width:20px;height:20px;fill:none;stroke:var(--third);stroke-width:.8}
.detail,.note{color:var(--second)}
.detail{margin-top:4px}
.note{margin-top:10px;max-width:80ch;font-size:13px;line-height:19px;text-wrap:pretty}
.caution{padding-left:10px;border-left:4px solid var(--yellow)}
.story{max-width:62ch;margin-top:20px;font:19px/29px var(--serif);text-wrap:pretty}
.story p+p,.story ul,.story ol,.story blockquote{margin-top:14px}
.story h2:first-child{margin-top:28px}
.story ul{padding-left:20px;list-style:disc}
.story ol{padding-left:24px;list-style:decimal}
.story blockquote{padding-left:16px;border-left:2px solid var(--rule)}
.story code,.story pre{font-size:15px;white-space:pre-wrap;overflow-wrap:anywhere}
.value{text-decoration-style:dotted}
.chronology{margin-top:14px;border-top:1px solid var(--rule)}
.chronology li{display:grid;grid-template-columns:minmax(0,10fr) minmax(0,13fr) minmax(0,8fr);gap:0 24px;align-items:center;padding:8px 0;border-bottom:1px solid var(--rule)}
.chronology li:target{background:var(--marker)}
.chronology a{padding:2px 0}
.when{text-align:right}
.p{display:inline-block;min-width:48px;color:var(--second)}
.axis .years{display:flex;font-size:12px;color:var(--second)}
.axis .years span{flex:1;padding-left:4px;border-left:1px solid var(--third)}
.chronology .axis{padding:4px 0}
.lane{display:block;width:100%;height:26px;overflow:visible;fill:var(--ink);stroke-width:1.5}
.lane path{fill:none;vector-effect:non-scaling-stroke}
.lane .year{stroke:var(--rule);stroke-width:1}
.parts a{font-weight:500}
.many{height:auto}
.lane .ink{fill:var(--ink)}
.names{margin:8px 0 16px;columns:280px;column-gap:32px}
.names li{padding:2px 0;break-inside:avoid}
.names li:target{background:var(--marker)}
.agrees{stroke:var(--cyan)}
.slips{stroke:var(--magenta)}
.neighbours{display:flex;flex-wrap:wrap;justify-content:space-between;gap:4px 24px;margin:-12px 0 20px;padding-right:20px;font-size:13px;color:var(--second)}
.neighbours a{padding:3px 0}
.facts{max-width:74ch;margin-top:20px}
.facts li{padding:7px 0;border-bottom:1px solid var(--rule)}
.facts li:first-child{font:21px/30px var(--serif);border-top:1px solid var(--rule)}
.facts li:target,tr:target,td:target,p:target{background:var(--marker)}
.address{display:inline-block;min-width:24px;text-align:center;color:var(--second);text-decoration:none}
.days{max-width:720px;margin-top:24px}
.days figcaption{font-size:13px;color:var(--second)}
.days svg{display:block;width:100%;height:96px;margin-top:4px;border-bottom:1px solid var(--third);fill:var(--ink)}
.ends{display:flex;justify-content:space-between;font-size:12px;color:var(--second)}
.pictures{display:flex;flex-wrap:wrap;gap:20px;margin-top:28px}
.pictures figure{flex:0 1 220px;min-width:150px}
.pictures img{display:block;width:100%;height:auto}
.face{position:relative}
.marks{position:absolute;inset:0;width:100%;height:100%;overflow:visible;fill:none;stroke:#c4006a;stroke-width:1.5}
.marks circle{fill:#fff}
.marks text{fill:#141617;stroke:none;font:600 12px/1 var(--sans);text-anchor:middle}
.pictures ol{margin-top:6px;padding-left:20px;list-style:decimal;font-size:13px;line-height:18px}
.pictures figcaption{margin-top:6px;font-size:12px;line-height:17px;color:var(--second)}
table{width:100%;margin-top:12px;border-collapse:collapse;font-size:14px;line-height:20px}
caption{padding:12px 0 4px;text-align:left;color:var(--second)}
th,td{padding:6px 14px 6px 0;border-bottom:1px solid var(--rule);text-align:left;vertical-align:top;overflow-wrap:anywhere}
thead th{font-size:12px;font-weight:400;color:var(--second);border-color:var(--third)}
tbody th{font-weight:500}
th:last-child,td:last-child{padding-right:0}
.figure{text-align:right}.p,td.figure,thead .figure{white-space:nowrap}
q{color:var(--second);font-family:var(--serif)}
.slip .figure,.cross{color:var(--magenta)}
.cross{font-weight:600}
dt{margin-top:10px;color:var(--second)}
.kind{margin-top:18px}
table+p{margin-top:10px}
.bibliography li{padding:5px 0 5px 24px;text-indent:-24px;overflow-wrap:anywhere}
.corrections li{padding:18px 0;border-bottom:1px solid var(--rule)}
.corrections blockquote{margin:6px 0;font:19px/28px var(--serif)}
footer{padding:14px 0;font-size:13px;color:var(--frame)}
.downloads{margin-top:12px;columns:320px;column-gap:48px}
.downloads li{padding:5px 0;border-bottom:1px solid var(--rule);break-inside:avoid}
.changes{max-width:90ch}
.changes li{padding:5px 0;border-bottom:1px solid var(--rule)}
.revision{padding-bottom:16px}
.door{margin-top:48px}
.door li{margin-top:14px;font-size:19px}
@media (max-width:640px){.pictures{gap:16px}.pictures figure{flex:1 1 150px;max-width:220px}body{padding:0 0 24px}.frame,footer{padding-left:16px;padding-right:16px}.sheet{padding:28px 16px 40px}h1{font-size:30px;line-height:34px;padding-right:24px}.languages{margin-left:0}.chronology li{grid-template-columns:minmax(0,1fr) auto;gap:2px 12px}.lane,.axis .years{grid-column:1/-1;grid-row:2}.axis span:empty{display:none}.stacks thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}.stacks,.stacks tbody,.stacks tr,.stacks th,.stacks td{display:block;text-align:left}.stacks tr{padding:10px 0;border-bottom:1px solid var(--rule)}.stacks th,.stacks td{padding:1px 0;border:0}.stacks td.figure{white-space:normal}.stacks td[data-head]:not(:empty)::before{content:attr(data-head) ": ";color:var(--second)}}
@media print{:root{color-scheme:light;--table:#fff;--sheet:#fff;--ink:#141617;--second:#55595c;--frame:#55595c;--third:#8b9093;--rule:#c9ccce;--cyan:#0086b3;--cyan-text:#006a8f;--magenta:#c4006a;--marker:#fff6c2}html{font-size:9.5pt;line-height:13.5pt;print-color-adjust:exact}body{max-width:none;padding:0}.frame ul,.neighbours,.address,.skip,.register{display:none}.sheet{padding:0;border:0}tr,figure,.chronology li,.corrections li{break-inside:avoid}h2{break-after:avoid;margin-top:22pt}.story{font-size:11.5pt;line-height:17pt}}
`;
