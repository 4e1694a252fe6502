import type { FilmRequest, PublishRequest, Work } from '../../contract/index.ts';
import type { Session } from '../session.ts';
import { type Places, placeApart, type RememberedPlaces } from './places.ts';
import { Previewing } from './previewing.ts';
import { Working } from './working.ts';

/** The account of the open dossier: looked at, and written where its owner says. */
export class Chronicle {
  readonly session: Session;
  readonly previewing: Previewing;
  readonly working = new Working();
  readonly #places: RememberedPlaces;

  constructor(session: Session, places: RememberedPlaces) {
    this.session = session;
    this.previewing = new Previewing(session);
    this.#places = places;
  }

  /** Where the open dossier's publications are written. */
  async places(): Promise<Places> {
    return await this.#places.of(this.session.opened.folder);
  }

  /** Begins to write a site. Throws `Refused` for a folder that does not stand apart. */
  async publish(request: PublishRequest): Promise<Work> {
    const { version, opened } = await this.session.shown();
    const { folder } = opened;
    const out = placeApart(request.out, folder);
    const work = this.working.start({ ...request, do: 'publish', out, folder, version });
    await this.#places.note(folder, { site: out });
    return work;
  }

  /** Begins to write a film's kit, as `publish` does. */
  async film(request: FilmRequest): Promise<Work> {
    const { version, opened } = await this.session.shown();
    const { folder } = opened;
    const out = placeApart(request.out, folder);
    const work = this.working.start({ ...request, do: 'film', out, folder, version });
    await this.#places.note(folder, { film: out });
    return work;
  }

  async close(): Promise<void> {
    await this.previewing.close();
    await this.working.close();
  }
}
