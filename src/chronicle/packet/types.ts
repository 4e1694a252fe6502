import type { Described, Mark, Side } from '../../bench/index.ts';
import type { Day } from '../../evidence/index.ts';
import type { Clock, LandedCost, NotLanded } from '../../market/index.ts';
import type { PaperSize } from '../paper/types.ts';

/** Whom a packet is for. */
export const READERS = ['seller', 'carrier', 'buyer'] as const;
export type Reader = (typeof READERS)[number];

/** What goes into a packet only where its owner ticked it. */
export const TICKS = ['seller', 'purchase', 'certificate', 'costs', 'notes', 'place'] as const;
export type Tick = (typeof TICKS)[number];

/** What is known of one copy, before anything is left out. */
export interface PacketGround {
  readonly copy: string;
  /** The card that is followed. */
  readonly subject: string;
  /** What the copy is held to be, several where that is open. */
  readonly printings: readonly string[];
  readonly bought: string;
  /** Grading service and grade; empty for a raw copy. */
  readonly graded: string;
  readonly certificate: string;
  readonly seller: string;
  readonly venue: string;
  readonly purchaseNo: string;
  readonly tracking: string;
  /** The seller's own words. */
  readonly listing: string;
  /** The newest day of what is known of it. */
  readonly on: Day | null;
  readonly faces: readonly PacketFace[];
  /** Null where the seller said nothing, or nothing was measured. */
  readonly described: Described | null;
  /** Traits seen by eye or tool. */
  readonly observations: readonly {
    readonly trait: string;
    readonly value: string;
    readonly sees: string;
  }[];
  readonly landed: LandedCost | NotLanded | null;
  readonly events: readonly PacketEvent[];
  readonly clock: Clock;
  readonly pictures: readonly PacketPicture[];
}

/** What was found on one face. */
export interface PacketFace {
  readonly side: Side;
  /** SVG to scale; null where no size is known. */
  readonly drawing: string | null;
  readonly marks: readonly Mark[];
  /** What could not be measured, in words. */
  readonly whyNot: string | null;
}

/** Something that happened, as the dossier has it. */
export interface PacketEvent {
  /** RFC 3339, or a day. */
  readonly at: string;
  readonly what: string;
  readonly with: string;
  /** Amount and currency, or empty. */
  readonly amount: string;
  readonly note: string;
}

/** A picture as it is packed. */
export interface PacketPicture {
  /** Name in the packet, under `pictures/`. */
  readonly name: string;
  readonly role: string;
  readonly side: string;
  /** As the dossier, else the camera states it; empty where neither does. */
  readonly taken: string;
  readonly rights: string;
  /** SHA-256 of the file as it was taken, in hexadecimal digits. */
  readonly asTaken: string;
  /** SHA-256 of the file in the packet. */
  readonly asPacked: string;
  readonly changed: 'nothing' | 'notes' | 'anew';
  /** What the dossier had noted when the picture was entered; empty where nothing. */
  readonly noted: string;
  /** A small one for the page, under its own name; null where it cannot be shown. */
  readonly shown: string | null;
}

/** How a packet is made. */
export interface PacketOptions {
  readonly reader: Reader;
  readonly ticks: ReadonlySet<Tick>;
  readonly size: PaperSize;
  /** Most marks and events that are told on the pages; the rest is counted. */
  readonly most: number;
  readonly scale: number;
}
