import { type CellArrays, sliceOf } from './cells.ts';
import { cellOfDay } from './entries.ts';
import type { Link } from './links.ts';
import type { Views } from './views.ts';

/** Lays out the links of each view, and the same links seen from the events they point at. */
export function layLinks(links: readonly Link[][], views: Views, cells: CellArrays) {
  const linkStart = new Int32Array(views.nViews + 1);
  for (let v = 0; v < views.nViews; v++)
    linkStart[v + 1] = linkStart[v]! + (linksFrom(links, views, v)?.length ?? 0);
  const n = linkStart[views.nViews]!;
  const laid = {
    linkStart,
    linkEvent: new Int32Array(n),
    linkReading: new Uint8Array(n),
    linkShare: new Float32Array(n),
  };
  const back = { view: new Int32Array(n), cell: new Int32Array(n).fill(-1) };
  for (let v = 0; v < views.nViews; v++) {
    linksFrom(links, views, v)?.forEach(({ event, reading, share }, i) => {
      const j = linkStart[v]! + i;
      laid.linkEvent[j] = event;
      laid.linkReading[j] = reading;
      laid.linkShare[j] = share;
      back.view[j] = v;
      if (views.viewLo[v] !== views.viewHi[v]) return;
      const slice = sliceOf(cells, event);
      const k = cellOfDay(slice, views.viewLo[v]!);
      if (k >= 0) back.cell[j] = slice.from + k;
    });
  }
  return { ...laid, ...layBackLinks(laid.linkEvent, back, views.viewStart.length - 1) };
}

/** The links of a view's statement, at its first view only. */
function linksFrom(links: readonly Link[][], views: Views, v: number): Link[] | undefined {
  const i = views.viewStatement[v]!;
  return views.firstView[i] === v ? links[i] : undefined;
}

/** Sorts links by the event that they point at; those to no single day of it are left out. */
function layBackLinks(
  linkEvent: Int32Array,
  { view, cell }: { readonly view: Int32Array; readonly cell: Int32Array },
  nEvents: number,
) {
  const backStart = new Int32Array(nEvents + 1);
  linkEvent.forEach((e, j) => {
    if (cell[j]! >= 0) backStart[e + 1]!++;
  });
  for (let e = 0; e < nEvents; e++) backStart[e + 1]! += backStart[e]!;
  const next = backStart.slice();
  const n = backStart[nEvents]!;
  const out = {
    backStart,
    backLink: new Int32Array(n),
    backView: new Int32Array(n),
    backCell: new Int32Array(n),
  };
  linkEvent.forEach((e, j) => {
    if (cell[j]! < 0) return;
    const at = next[e]!++;
    out.backLink[at] = j;
    out.backView[at] = view[j]!;
    out.backCell[at] = cell[j]!;
  });
  return out;
}
