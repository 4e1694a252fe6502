import { spawn } from 'node:child_process';

/** The command that opens an address in this system's browser; none where there is no screen. */
export function browserCommand(
  platform: NodeJS.Platform,
  env: NodeJS.ProcessEnv,
): readonly string[] | undefined {
  if (platform === 'darwin') return ['open'];
  if (platform === 'win32') return ['cmd', '/c', 'start', ''];
  return env.DISPLAY || env.WAYLAND_DISPLAY ? ['xdg-open'] : undefined;
}

/** Opens an address in the browser; answers whether one could be started. */
export async function openBrowser(url: string): Promise<boolean> {
  const [command, ...words] = browserCommand(process.platform, process.env) ?? [];
  if (command === undefined) return false;
  const child = spawn(command, [...words, url], { stdio: 'ignore', detached: true });
  child.unref();
  return new Promise((done) => {
    child.once('error', () => done(false));
    child.once('spawn', () => done(true));
  });
}
