import { type Command, InvalidArgumentError, Option } from 'commander';
import type { Terminal } from '../terminal.ts';

/** Adds `film` to the commands; `end` takes how it ended. */
export function addFilm(program: Command, terminal: Terminal, end: (exit: 0 | 1) => void): void {
  program
    .command('film')
    .description('make all that a film of the account needs: script, stills, captions, edit')
    .argument('<dossier>', 'folder of the dossier')
    .option('--out <folder>', 'where the kit is written')
    .option(
      '--order <order>',
      'oldest or newest first, or a file with ids of printings, one a line',
    )
    .addOption(
      new Option('--language <tag>', 'language of script and stills').choices([
        'en',
        'pt',
        'ja',
        'ko',
      ]),
    )
    .option('--rate <number>', 'words a minute at which it is read; else 160', wordsAMinute)
    .option('--prices', 'tell what a raw copy may fetch too')
    .option('--marks <file>', 'marks that were set while recording; captions and edit follow them')
    .option('--recording <file>', 'the recording, as the edit names it')
    .option('--write', 'with --marks: write what was seen on copies to the desk')
    .option('--check <film>', 'list the spoken figures of a film that no longer hold')
    .action(async (folder, options) =>
      end(await (await import('../commands/film.ts')).film(folder, options, terminal)),
    );
}

function wordsAMinute(text: string): number {
  const value = Number(text);
  if (value >= 40 && value <= 400) return value;
  throw new InvalidArgumentError('Words a minute from 40 to 400 are expected, such as 160.');
}
