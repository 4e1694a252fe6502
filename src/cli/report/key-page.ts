import {
  type IdentificationKey,
  type KeyAround,
  keyFit,
  keyNotes,
  leadsTo,
  sayTrait,
} from '../../catalogue/index.ts';

/** A key as a page of A4 that can be printed; all of it is in the one file. */
export function keyPage(key: IdentificationKey, around: KeyAround): string {
  const [size, columns] = keyFit(key, around);
  const title = `Key to ${around.title || 'the printings'}`;
  const couplets = key.couplets.map(({ number, from, trait, sees, leads }) => {
    const back = from === null ? '' : ` <a href="#c${from}">(${from})</a>`;
    const rows = leads.map((lead) => {
      const to = escaped(leadsTo(lead, around.called));
      const where = lead.to === null ? `<b>${to}</b>` : `<a href="#c${to}">${to}</a>`;
      return `<li><span>${escaped(lead.says)}</span><i></i>${where}</li>`;
    });
    return `<section id="c${number}"><h2>${number}${back} ${escaped(sayTrait(trait))}, <em>${sees}</em></h2><ul>${rows.join('')}</ul></section>`;
  });
  const notes = keyNotes(key, around).map((note) => `<p>${escaped(note)}</p>`);
  const asOf = around.day === '' ? '' : `<small>as of ${around.day}</small>`;
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title><style>${styleOf(size, columns)}</style></head>
<body><h1>${escaped(title)} ${asOf}</h1>
<main>${couplets.join('\n')}</main>
<footer>${notes.join('')}</footer></body></html>
`;
}

function styleOf(size: number, columns: number): string {
  return `@page{size:A4;margin:10mm}
body{font:${size}pt/1.25 Georgia,serif;color:#111;background:#fff;margin:0 auto;max-width:190mm}
h1{font-size:12pt;margin:0 0 2mm}h1 small{font-size:8pt;font-weight:normal}
main{columns:${columns};column-gap:5mm}
section{break-inside:avoid;margin:0 0 .5em}
h2{font-size:1em;margin:0}h2 em{font-weight:normal}
ul{list-style:none;margin:0;padding:0 0 0 1em}
li{display:flex;gap:.4em;align-items:baseline}
li b{text-align:right}
i{flex:1;border-bottom:.5pt dotted #888}
a{color:inherit}
footer{font-size:7pt;border-top:.5pt solid #111;margin-top:2mm}footer p{margin:1mm 0 0}`;
}

function escaped(text: string): string {
  const signs: Readonly<Record<string, string>> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
  };
  return text.replace(/[&<>"]/g, (sign) => signs[sign] ?? sign);
}
