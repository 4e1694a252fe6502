import type { CopyWork } from './useCopyWork.ts';
import type { Movable } from './useMoving.ts';

interface Props {
  readonly work: CopyWork;
}

/** What can be done with the outline and the printed frame. */
export function MovingTools({ work }: Props) {
  const { face, moving } = work;
  if (!face) return null;
  return (
    <div className="corner-tools">
      {moving.what ? <Hint work={work} what={moving.what} /> : null}
      <div className="acts">
        {moving.what ? <Acts work={work} what={moving.what} /> : <Begin work={work} />}
      </div>
    </div>
  );
}

interface MovedProps extends Props {
  readonly what: Movable;
}

function Hint({ work: { face, moving }, what }: MovedProps) {
  return (
    <p className="hint">
      {what === 'frame'
        ? 'Move the corners or sides onto the outermost printed line; '
        : `${(face?.outline?.p ?? 0) < 0.5 ? 'Is this the card? The outline is not sure. ' : ''}Move the corners to where its straight sides would meet, beyond the rounding, or its sides; `}
      borders follow at once, marks as soon as you rest. By keyboard: Tab to a corner or side, arrow
      keys move it by 1 pixel, with Shift by 0.1.
      {moving.behind ? <span className="pending"> Marks are being looked for …</span> : null}
      {moving.trouble ? <span role="alert"> {moving.trouble}</span> : null}
    </p>
  );
}

function Begin({ work: { face, moving, side, act, busy } }: Props) {
  const { set } = moving;
  const giveUp = (what: Movable) => {
    const left = { ...set, [what === 'frame' ? 'frame' : 'corners']: null };
    const body = { ...left, side, refine: null, keep: true };
    return act({ to: 'outline', body }, `The ${what} set by hand was given up.`);
  };
  return (
    <>
      <button type="button" className="choice" onClick={() => moving.start('outline')}>
        Move the outline
      </button>
      <button type="button" className="choice" onClick={() => moving.start('frame')}>
        Move the frame
      </button>
      {(['outline', 'frame'] as const)
        .filter((what) => face?.[what]?.byHand)
        .map((what) => (
          <button
            key={what}
            type="button"
            className="choice"
            disabled={busy}
            onClick={() => giveUp(what)}
          >
            Give up the {what} set by hand
          </button>
        ))}
    </>
  );
}

function Acts({ work: { moving, side, act, busy }, what }: MovedProps) {
  // What is only proposed becomes the hand's once it is drawn or kept.
  const body = {
    ...moving.set,
    ...(what === 'frame' ? { frame: moving.quad } : { corners: moving.quad }),
  };
  const draw = async () => {
    const face = (await act({ to: 'outline', body: { ...body, refine: what, keep: false } }))?.[
      side
    ];
    const drawn = face?.[what]?.corners;
    if (drawn) moving.take(drawn);
  };
  const keep = async () => {
    const kept = `The ${what} was kept, and all was measured by it.`;
    if (await act({ to: 'outline', body: { ...body, refine: null, keep: true } }, kept)) {
      moving.leave();
    }
  };
  return (
    <>
      <button type="button" className="choice" disabled={busy} onClick={draw}>
        Draw onto the edges
      </button>
      <button type="button" className="choice" disabled={busy} onClick={keep}>
        Keep it
      </button>
      <button type="button" className="choice" onClick={moving.leave}>
        Leave it
      </button>
    </>
  );
}
