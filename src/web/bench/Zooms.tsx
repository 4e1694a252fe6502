import type { View } from './useView.ts';

/** Closer, further and all of it, for the pointer. */
export function Zooms({ view }: { readonly view: View }) {
  return (
    <div className="zooms">
      <div className="zoom">
        <button type="button" aria-label="Further away" onClick={() => view.closer(1 / 1.5)}>
          −
        </button>
        <button type="button" aria-label="Closer" onClick={() => view.closer(1.5)}>
          +
        </button>
        <button type="button" className="plain all" onClick={view.all} disabled={view.zoom <= 1.01}>
          all of it
        </button>
        <span>{view.zoom > 1.01 ? `${view.zoom.toFixed(1)} times` : ''}</span>
      </div>
    </div>
  );
}
