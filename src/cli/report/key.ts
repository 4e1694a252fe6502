import {
  type IdentificationKey,
  type KeyAround,
  keyNotes,
  leadsTo,
  sayTrait,
} from '../../catalogue/index.ts';
import { wrapped } from './width.ts';
import { counted } from './words.ts';

/** A key for reading in the terminal. */
export function keyReport(key: IdentificationKey, around: KeyAround, width: number): string {
  const asOf = around.day === '' ? '' : `, as of ${around.day}`;
  const head = `Key to ${around.title || 'the printings'}: ${counted(key.couplets.length, 'couplet')}${asOf}\n`;
  const couplets = key.couplets.map(({ number, from, trait, sees, leads }) => {
    const back = from === null ? '' : ` (${from})`;
    const lines = leads.map((lead) => {
      const text = `${lead.says} → ${leadsTo(lead, around.called)}`;
      return wrapped(text, width - 6)
        .map((line, i) => `${i === 0 ? '    ' : '      '}${line}\n`)
        .join('');
    });
    return `\n${number}${back}  ${sayTrait(trait)}, by ${sees}\n${lines.join('')}`;
  });
  const notes = keyNotes(key, around).map((note) => `\n${wrapped(note, width).join('\n')}\n`);
  return [head, ...couplets, ...notes].join('');
}
