/** Mark-up that is right as it stands. */
export class Html {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** What may stand in a template: texts are escaped, `null`, `undefined` and `false` leave nothing. */
export type Part = string | number | Html | null | undefined | false | readonly Part[];

/** A piece of a page; everything put in is shown as text, unless it is `Html` itself. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(
    strings.reduce((text, string, i) => text + rendered(parts[i - 1] ?? '') + string),
  );
}

function rendered(part: Part): string {
  if (part === null || part === undefined || part === false) return '';
  if (part instanceof Html) return part.text;
  if (typeof part === 'object') return part.map(rendered).join('');
  return escaped(String(part));
}

const SIGNS: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** A text as HTML, safe between tags and within double quotes. Control characters are left out. */
function escaped(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: HTML forbids control characters
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]/g, '')
      .replace(/[&<>"]/g, (sign) => SIGNS[sign] ?? sign)
  );
}
