import type { Account } from '../account/types.ts';
import type { ToldRevision } from '../revisions/types.ts';
import type { Language } from '../words/types.ts';
import type { Filling } from './cells.ts';
import type { Html } from './html.ts';
import type { DownloadKind } from './words/types.ts';

/** A picture as it is published, in several sizes under `pictures/STEM-WIDTH`. */
export interface SitePicture {
  readonly stem: string;
  /** Ascending by width, in pixels. */
  readonly sizes: readonly { readonly width: number; readonly height: number }[];
  /**
   * Corners of the places on its face that are pointed at, in the order of `placesOn`, as shares of
   * width and height; undefined where nothing is pointed at.
   */
  readonly marks?: readonly (readonly (readonly [number, number])[])[] | undefined;
}

/** Something to download beside the pages. */
export interface Download {
  /** From the root of the site. */
  readonly href: string;
  readonly kind: DownloadKind;
  /** Size in bytes. */
  readonly bytes: number;
  /** Of what is written in one language: the others do not offer it. */
  readonly language?: Language;
}

/** What a site is made from. */
export interface SiteGround {
  readonly account: Account;
  readonly languages: readonly Language[];
  /** By the name of the file in the dossier; a picture that is not here is left out. */
  readonly pictures: ReadonlyMap<string, SitePicture>;
  readonly downloads: readonly Download[];
  /** Newest first: the one that the site is of, and those before it. */
  readonly history: readonly ToldRevision[];
}

/** What the pages of one language are made with. */
export interface Teller extends Filling {
  readonly ground: SiteGround;
}

/** A page within the folder of its language. */
export interface Page {
  readonly path: string;
  readonly title: string;
  readonly main: Html;
  /** The screen that it is a part of. */
  readonly under?: string;
}
