import type { BoundClaim } from '../../population/index.ts';
import { addRows } from '../added.ts';
import { writeJson } from '../json.ts';
import { tableOf } from '../report/table.ts';
import { wrapped } from '../report/width.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

const FILE = 'claims.csv';

/** Shows the claims that dated certificates make, and adds them to the evidence where asked for. */
export async function boundClaims(
  folder: string,
  claims: readonly BoundClaim[],
  { write = false, json = false }: { readonly write?: boolean; readonly json?: boolean },
  called: (printing: string) => string,
  terminal: Terminal,
): Promise<0> {
  const bare = claims.find(({ source }) => source === '');
  if (json) await writeJson({ claims }, terminal);
  else await terminal.write(shown(claims, called, terminal.width));
  if (write && bare !== undefined)
    throw new WrongCall(
      `No source in sources.csv stands for the labels that ${called(bare.printing)} was seen with: enter one with its service.`,
    );
  if (write && claims.length > 0) {
    await addRows(
      folder,
      FILE,
      claims.map((claim) => ({ ...claim })),
    );
    terminal.say(`Written to ${FILE}: ${counted(claims.length, 'row')}.\n`);
  } else if (!json && claims.length > 0)
    await terminal.write('Nothing is written yet; with --write it is.\n');
  return 0;
}

function shown(
  claims: readonly BoundClaim[],
  called: (printing: string) => string,
  width: number,
): string {
  if (claims.length === 0)
    return wrapped('No certificate in a dated block tells more than the evidence does.', width)
      .map((line) => `${line}\n`)
      .join('');
  const rows = claims.map((one) => [
    called(one.printing),
    one.value,
    one.source === '' ? 'no source' : one.source,
    one.locator,
  ]);
  const heads = ['printing', 'out by', 'source', 'where'].map((head) => ({ head }));
  return `${tableOf(heads, rows, width)}\n`;
}
