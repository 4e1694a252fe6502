import { spawnSync } from 'node:child_process';

const PROGRAMS = ['qpdf', 'pdfinfo', 'pdffonts', 'pdftotext', 'pdfimages'];

/** Whether others' readers of PDF are there; where they are not the checks are named as not run. */
export const CAN_READ = PROGRAMS.every(
  (name) => spawnSync(name, ['--help'], { stdio: 'ignore' }).error === undefined,
);

/** What a reader of PDF prints. Throws where it fails. */
export function read(program: string, words: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(program, words, {
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (status !== 0) throw new Error(`${program}: ${stderr}`);
  return stdout;
}
