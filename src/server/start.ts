import { randomBytes } from 'node:crypto';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ServerType, serve } from '@hono/node-server';
import type { Hono } from 'hono';
import { usualDataFolder } from '../host/index.ts';
import { appOf } from './app.ts';
import { Bench } from './bench/bench.ts';
import { measurer } from './bench/measurer.ts';
import { Chronicle } from './chronicle/chronicle.ts';
import { RememberedPlaces } from './chronicle/places.ts';
import { Counting } from './counts/counting.ts';
import { Pricing } from './counts/pricing.ts';
import { type Dater, threadedDater } from './dater.ts';
import { Deciding } from './desk/deciding.ts';
import { Identifying } from './desk/identifying.ts';
import { reckoner } from './desk/reckoner.ts';
import { openHome } from './home.ts';
import { openFolder } from './opened.ts';
import { readPages } from './pages.ts';
import { Session } from './session.ts';

/** How the workbench is started; all of it may be left out. */
export interface StartOptions {
  /** The dossier to open; else the one opened last, or the demo. */
  readonly folder?: string;
  /** Port to try first; a busy one gets the next, 0 any that is free. */
  readonly port?: number;
  /** Where the user's dossiers are kept; else the usual place of the system. */
  readonly dataFolder?: string;
  /** The built page. */
  readonly page?: string;
  /** Who dates; else two threads. */
  readonly dater?: Dater;
}

/** A workbench that answers. */
export interface Running {
  readonly url: string;
  /** What requests carry to be answered; the page has it from its own head. */
  readonly token: string;
  close(): Promise<void>;
}

const HOST = '127.0.0.1';
const FIRST_PORT = 4173;
const PORTS_TRIED = 50;

/**
 * Starts the workbench on this machine's own address, and opens a dossier in it. Throws where the
 * folder given is no dossier, or no port is free.
 */
export async function startServer(options: StartOptions = {}): Promise<Running> {
  const below = (path: string) => fileURLToPath(new URL(path, import.meta.url));
  const home = await openHome(options.dataFolder ?? usualDataFolder(), below('../../demo/dossier'));
  const pages = await readPages(options.page ?? below('../../dist/web'));
  const opened = await openFolder(options.folder ? resolve(options.folder) : await home.usual());
  const session = new Session(opened, options.dater ?? threadedDater());
  const token = randomBytes(32).toString('base64url');
  const measuring = measurer();
  const following = measurer();
  const bench = new Bench(session, measuring, following);
  const counting = new Counting(session);
  const pricing = new Pricing(session);
  const reckoning = reckoner();
  const deciding = new Deciding(session, reckoning);
  const identifying = new Identifying(session, reckoning);
  const chronicle = new Chronicle(session, new RememberedPlaces(home.folder));
  let port = 0;
  const app = appOf({
    session,
    bench,
    counting,
    pricing,
    deciding,
    identifying,
    chronicle,
    home,
    pages,
    token,
    port: () => port,
  });
  try {
    const server = await listen(app, options.port ?? FIRST_PORT);
    port = portOf(server);
    await home.note(opened.folder, (await session.shown()).dossier.manifest.title);
    return {
      url: `http://${HOST}:${port}/`,
      token,
      close: async () => {
        await close(server, session);
        await measuring.close();
        await following.close();
        await reckoning.close();
        await counting.close();
        await pricing.close();
        await chronicle.close();
      },
    };
  } catch (error) {
    await session.close();
    throw error;
  }
}

async function listen(app: Hono, first: number): Promise<ServerType> {
  const last = first === 0 ? 0 : Math.min(first + PORTS_TRIED, 65_535);
  for (let port = first; ; port++) {
    try {
      return await listenAt(app, port);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if ((code !== 'EADDRINUSE' && code !== 'EACCES') || port >= last) throw error;
    }
  }
}

async function listenAt(app: Hono, port: number): Promise<ServerType> {
  return await new Promise((found, failed) => {
    const server = serve({ fetch: app.fetch, hostname: HOST, port }, () => found(server));
    server.once('error', failed);
  });
}

function portOf(server: ServerType): number {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new TypeError('no port');
  return address.port;
}

async function close(server: ServerType, session: Session): Promise<void> {
  const ended = new Promise((done) => server.close(done));
  if ('closeAllConnections' in server) server.closeAllConnections();
  await ended;
  await session.close();
}
