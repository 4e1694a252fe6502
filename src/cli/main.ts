import { Command, CommanderError, InvalidArgumentError } from 'commander';
import { parseEdtf } from '../evidence/index.ts';
import { addFilm } from './film/added.ts';
import { addPacket } from './packet/added.ts';
import { ownTerminal, type Terminal } from './terminal.ts';
import { version } from './version.ts';
import type { Workbench } from './workbench.ts';
import { WrongCall } from './wrong-call.ts';

/** How a command ended: 0 fine, 1 the data have faults, 2 it was called wrongly. */
type Exit = 0 | 1 | 2;

/**
 * Runs the command that the words name and answers how the process should end. Each command is
 * loaded when it is called, so that asking for help costs nothing.
 */
export async function main(
  words: readonly string[],
  workbench: Workbench,
  terminal: Terminal = ownTerminal(),
): Promise<Exit> {
  let exit: Exit = 0;
  const program = programOf(terminal, workbench, (code) => {
    exit = code;
  });
  try {
    await program.parseAsync([...words], { from: 'user' });
    return exit;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof WrongCall)) throw error;
    terminal.say(`${error.message}\n`);
    return 2;
  }
}

function programOf(terminal: Terminal, workbench: Workbench, end: (exit: Exit) => void): Command {
  const program = new Command('printlore')
    .description('A workbench for the collector who researches one card through every printing.')
    .version(version())
    .exitOverride()
    .configureOutput({ writeOut: (text) => void terminal.write(text), writeErr: terminal.say });
  addResearch(program, terminal, end);
  addIdentify(program, terminal, end);
  addMarket(program, terminal, end);
  addPictures(program, terminal, end);
  addColour(program, terminal, end);
  addCompare(program, terminal, end);
  addFilm(program, terminal, end);
  addChronicle(program, terminal, end);
  addRevisions(program, terminal, end);
  addPacket(program, terminal, end);
  program
    .command('open')
    .description('open the workbench in the browser')
    .argument('[folder]', 'dossier to open; else the one opened last, or the demo')
    .option('--no-open', 'print the address and leave the browser shut')
    .option('--port <number>', 'port to try first; a busy one gets the next', wholeNumber(65_535))
    .action(async (folder, options) => {
      const { open } = await import('./commands/open.ts');
      await open(folder, options, workbench, terminal);
    });
  return program;
}

function addResearch(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('check')
    .description('list every fault in a dossier')
    .argument('<dossier>', 'folder of the dossier')
    .option('--json', 'print JSON')
    .action(async (folder, options) =>
      end(await (await import('./commands/check.ts')).check(folder, options, terminal)),
    );
  program
    .command('date')
    .description('say when each printing came out, how sure that is, and why; writes nothing')
    .argument('<dossier>', 'folder of the dossier')
    .option('--json', 'print JSON')
    .option('--seed <number>', 'seed of the random numbers', wholeNumber(Number.MAX_SAFE_INTEGER))
    .action(async (folder, options) =>
      end(await (await import('./commands/date.ts')).date(folder, options, terminal)),
    );
  program
    .command('population')
    .description('say how many copies of each printing are graded and can turn up, and how sure')
    .argument('<dossier>', 'folder of the dossier')
    .option('--on <day>', 'the day that the answer holds for, such as 2026-06-30', day)
    .option('--add <file>', 'show what a pasted or saved report says; needs --service, --as-of')
    .option('--service <id>', 'the service of the report or letter')
    .option('--as-of <day>', 'the day on which the report was read', day)
    .option('--write', 'with --add or --claims: write it to the dossier')
    .option('--claims', 'show the claims on releases that dated certificates make')
    .option('--letter', 'with --service: the letter that asks the service to mend its report')
    .option('--json', 'print JSON')
    .action(async (folder, options) =>
      end(await (await import('./commands/population.ts')).population(folder, options, terminal)),
    );
  program
    .command('notes')
    .description('read notes in any shape, line by line, and show what they claim')
    .argument('<file>', 'text file')
    .argument('[dossier]', 'dossier whose printings and sources the notes may name')
    .option('--json', 'print JSON')
    .action(async (file, folder, options) =>
      end(await (await import('./commands/notes.ts')).notes(file, folder, options, terminal)),
    );
}

function addIdentify(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('identify')
    .description('say which printing a copy is, how sure that is, and where to look next')
    .argument('<dossier>', 'folder of the dossier')
    .option('--copy <id>', 'a copy of the desk, with what was seen on it')
    .option(
      '--saw <trait=value>',
      'what was seen; may be given several times',
      (one, before: readonly string[] = []) => [...before, one],
    )
    .option('--on <day>', 'the day that the answer holds for, such as 2026-06-30', day)
    .option('--key', 'the key to all printings, in place of one copy')
    .option('--out <file>', 'with --key: a page of A4 to print, as HTML, into this file')
    .option('--json', 'print JSON')
    .action(async (folder, options) =>
      end(await (await import('./commands/identify.ts')).identify(folder, options, terminal)),
    );
}

function addMarket(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('value')
    .description('say what a copy of each printing may fetch, by service and grade; no promise')
    .argument('<dossier>', 'folder of the dossier')
    .option(
      '--on <day>',
      'day that prices hold for, YYYY-MM-DD; else the newest in the dossier',
      day,
    )
    .option('--printing <id>', 'every grade of one printing')
    .option('--seed <number>', 'seed of the random numbers', wholeNumber(Number.MAX_SAFE_INTEGER))
    .option('--json', 'print JSON')
    .action(async (folder, options) =>
      end(await (await import('./commands/value.ts')).value(folder, options, terminal)),
    );
  program
    .command('decide')
    .description('say what to keep, return, complain about or submit, what to bid and what to buy')
    .argument('<dossier>', 'folder of the dossier')
    .option('--on <day>', 'day that the answer holds for, YYYY-MM-DD; else the newest', day)
    .option('--budget <amount>', 'the most to spend on batches, and on wants', aboveNothing)
    .option('--calendar <file>', 'write the deadlines that run as iCalendar into this file')
    .option('--seed <number>', 'seed of the random numbers', wholeNumber(Number.MAX_SAFE_INTEGER))
    .option('--json', 'print JSON')
    .action(async (folder, options) =>
      end(await (await import('./commands/decide.ts')).decide(folder, options, terminal)),
    );
}

function addChronicle(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('publish')
    .description('freeze a revision and write it as a site, or tell what leaves with it')
    .argument('<dossier>', 'folder of the dossier')
    .option('--out <folder>', 'write the site into this folder; an earlier site in it is replaced')
    .option('--proof', 'with --out: write a proof, which freezes no revision')
    .option('--draft', 'print a draft of the facts of each printing, for story/')
    .option('--list', 'list what leaves and what stays; writes nothing')
    .option('--downloads <folder>', 'write what readers may download into this folder')
    .option('--prices', 'show prices')
    .option('--on <day>', 'with --out and --draft: the day that the account holds for', day)
    .option('--seed <number>', 'seed of the random numbers', wholeNumber(Number.MAX_SAFE_INTEGER))
    .option('--json', 'with --list: print JSON')
    .action(async (folder, { list = false, downloads, ...options }) => {
      const asked = [options.out, options.draft, list || undefined, downloads];
      if (asked.filter((one) => one !== undefined).length !== 1)
        throw new WrongCall('Ask for one thing: --out, --draft, --list or --downloads.');
      const { json, prices = false } = options;
      if (list) {
        const { leaving } = await import('./commands/leaving.ts');
        return end(await leaving(folder, { json, prices }, terminal));
      }
      if (downloads !== undefined) {
        const { downloads: write } = await import('./commands/downloads.ts');
        return end(await write(folder, downloads, { prices }, terminal));
      }
      const { publish } = await import('./commands/publish.ts');
      return end(await publish(folder, options, terminal));
    });
}

function addRevisions(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('revisions')
    .description('list the frozen revisions of a dossier, compare two, or freeze the next')
    .argument('<dossier>', 'folder of the dossier')
    .argument('[from]', 'number of the earlier revision')
    .argument('[to]', 'number of the later one; else now, the dossier as it stands')
    .option('--freeze', 'freeze the dossier as it stands as the next revision')
    .option('--on <day>', 'day of the revision, YYYY-MM-DD; else the newest in the dossier', day)
    .option('--json', 'print JSON')
    .action(async (folder, from, to, options) =>
      end(
        await (await import('./commands/revisions.ts')).revisions(
          folder,
          [from, to],
          options,
          terminal,
        ),
      ),
    );
}

function addPictures(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('relief')
    .description('measure dents from pictures of the front under a lamp that was moved')
    .argument('<setup>', 'JSON with the pictures and where the lamp stood')
    .option('--out <file>', 'draw the relief with its marks, to scale, as SVG into this file')
    .option('--json', 'print JSON')
    .action(async (file, options) =>
      end(await (await import('./commands/relief.ts')).relief(file, options, terminal)),
    );
  program
    .command('examine')
    .description('measure a copy from its pictures: outline, size, borders, centering, marks')
    .argument('[front]', 'picture of the front, or the folder of a copy’s pictures')
    .argument('[back]', 'picture of the back')
    .option('--card <size>', 'width and height of the card in mm, such as 63x88')
    .option('--dpi <number>', 'dots an inch of a scan; else what the file states', dotsAnInch)
    .option(
      '--raking <picture>',
      'the front again under a low lamp, PICTURE or PICTURE@AZIMUTH; may be given several times',
      (file, before: readonly string[] = []) => [...before, file],
    )
    .option('--copy <id>', 'a copy of the dossier that is named in place of FRONT')
    .option('--out <folder>', 'draw what was found, to scale, as SVG into this folder')
    .option('--write', 'with --copy: keep what was measured in desk/examinations')
    .option('--jobs <file>', 'many copies, one JSON object a line, answered in the same order')
    .option('--json', 'print JSON')
    .action(async (front, back, options) =>
      end(await (await import('./commands/examine.ts')).examine(front, back, options, terminal)),
    );
  program
    .command('screen')
    .description('tell how a card was printed from a scan: process, rulings and angles of the inks')
    .argument('<image>', 'scan at 1,200 dots an inch or more')
    .option('--dpi <number>', 'dots an inch of the scan; else what the file states', dotsAnInch)
    .option('--json', 'print JSON')
    .action(async (file, options) =>
      end(await (await import('./commands/screen.ts')).screen(file, options, terminal)),
    );
}

function addCompare(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  const several = (file: string, before: readonly string[] = []) => [...before, file];
  program
    .command('compare')
    .description('compare a copy with references, or two pictures for being of one specimen')
    .argument('<picture...>', 'pictures of one face of the copy')
    .option(
      '--with <picture>',
      'a reference, or the other picture; may be given several times',
      several,
    )
    .option('--specimen', 'ask whether the two pictures show one specimen')
    .option(
      '--other <picture>',
      'with --specimen: another copy; may be given several times',
      several,
    )
    .option('--card <size>', 'width and height of the card in mm, such as 63x88')
    .option('--dpi <number>', 'dots an inch of scans; else what the files state', dotsAnInch)
    .option('--chart <file>', 'JSON file: a colour chart that lies beside the card in the pictures')
    .option('--json', 'print JSON')
    .action(async (files, options) =>
      end(await (await import('./commands/compare.ts')).compare(files, options, terminal)),
    );
}

function addColour(program: Command, terminal: Terminal, end: (exit: Exit) => void): void {
  program
    .command('colour')
    .description('measure colours in a picture by the patches of a chart in it')
    .argument('<image>', 'picture with the chart')
    .requiredOption(
      '--chart <file>',
      'JSON file: colours of the patches, with their places or the columns of their grid',
    )
    .option('--json', 'print JSON')
    .action(async (file, options) =>
      end(await (await import('./commands/colour.ts')).colour(file, options, terminal)),
    );
}

function day(text: string): string {
  if (/^\d{4}-\d\d-\d\d$/.test(text) && parseEdtf(text).ok) return text;
  throw new InvalidArgumentError('A day is expected, such as 2026-06-30.');
}

function dotsAnInch(text: string): number {
  const value = Number(text);
  if (value > 0 && value < 100_000) return value;
  throw new InvalidArgumentError('Dots an inch are expected, such as 1200.');
}

function aboveNothing(text: string): number {
  const value = Number(text);
  if (text.trim() !== '' && value >= 0 && Number.isFinite(value)) return value;
  throw new InvalidArgumentError('An amount such as 250 is expected, 0 or above.');
}

function wholeNumber(most: number): (text: string) => number {
  return (text) => {
    const value = Number(text);
    if (/^\d+$/.test(text) && value <= most) return value;
    throw new InvalidArgumentError(`A whole number from 0 to ${most} is expected.`);
  };
}
