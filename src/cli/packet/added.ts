import type { Command } from 'commander';
import type { Terminal } from '../terminal.ts';

/** Adds `packet` to the commands; `end` takes how it ended. */
export function addPacket(program: Command, terminal: Terminal, end: (exit: 0 | 1) => void): void {
  program
    .command('packet')
    .description('pack the evidence on one copy for a complaint or a buyer: four pages and a bag')
    .argument('<dossier>', 'folder of the dossier')
    .argument('<copy>', 'id of the copy')
    .option('--out <folder>', 'the folder of the packet; an earlier packet there is replaced')
    .option('--list', 'list what would leave and what would stay; writes nothing')
    .option('--for <reader>', 'who reads it: seller, carrier or buyer', 'seller')
    .option(
      '--with <what>',
      'let out what else stays, several with commas, such as seller,costs',
      '',
    )
    .option('--paper <size>', 'a4 or letter', 'a4')
    .action(async (folder, copy, options) =>
      end(await (await import('../commands/packet.ts')).packet(folder, copy, options, terminal)),
    );
}
