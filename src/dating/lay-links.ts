import { type CellArrays, sliceOf } from './cells.ts';
import { cellOfDay } from './entries.ts';
import { Column, startsOf } from './grow.ts';
import type { Link } from './links.ts';
import type { Views } from './views.ts';

/** Lays out the links of each view, and the same links seen from the events they point at. */
export function layLinks(links: readonly Link[][], views: Views, cells: CellArrays) {
  const linkStart = new Int32Array(views.nViews + 1);
  const event = new Column();
  const reading = new Column();
  const share = new Column();
  const back: BackLink[][] = Array.from({ length: views.viewStart.length - 1 }, () => []);
  for (let v = 0; v < views.nViews; v++) {
    const i = views.viewStatement[v]!;
    if (views.firstView[i] === v) {
      for (const link of links[i]!) {
        const slice = sliceOf(cells, link.event);
        const k = views.viewLo[v] === views.viewHi[v] ? cellOfDay(slice, views.viewLo[v]!) : -1;
        if (k >= 0) back[link.event]!.push({ link: event.length, view: v, cell: slice.from + k });
        event.push(link.event);
        reading.push(link.reading);
        share.push(link.share);
      }
    }
    linkStart[v + 1] = event.length;
  }
  const flat = back.flat();
  return {
    linkStart,
    linkEvent: new Int32Array(event.done()),
    linkReading: new Uint8Array(reading.done()),
    linkShare: new Float32Array(share.done()),
    backStart: startsOf(back),
    backLink: Int32Array.from(flat, ({ link }) => link),
    backView: Int32Array.from(flat, ({ view }) => view),
    backCell: Int32Array.from(flat, ({ cell }) => cell),
  };
}

interface BackLink {
  readonly link: number;
  readonly view: number;
  readonly cell: number;
}
