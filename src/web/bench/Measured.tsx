import type { BenchFace } from '../../contract/index.ts';
import { sayShares } from './dimensions.ts';

/** The measurements of a face in words and numbers, as the drawing shows them. */
export function Measured({ face: { size, frame, outline } }: { readonly face: BenchFace }) {
  if (!outline || outline.p < 0.5) return null;
  return (
    <section>
      <h3>Measured</h3>
      <dl className="facts">
        {size ? (
          <Fact name="size">
            {size.sd
              ? `${size.mm[0].toFixed(2)} ± ${size.sd[0].toFixed(2)} by ${size.mm[1].toFixed(2)} ± ${size.sd[1].toFixed(2)} mm`
              : `${size.mm.join(' by ')} mm, as the dossier tells`}
          </Fact>
        ) : null}
        {frame ? <FrameFacts frame={frame} /> : <Fact name="centering">No frame was found.</Fact>}
        <Fact name="outline">
          {outline.byHand ? 'set by hand' : `probability ${outline.p.toFixed(2)}`}
        </Fact>
      </dl>
    </section>
  );
}

function FrameFacts({ frame }: { readonly frame: NonNullable<BenchFace['frame']> }) {
  const { borders, bordersSd, leftRight, topBottom, sd, rotation, rotationSd } = frame;
  const doubt = (side: 'left' | 'right' | 'top' | 'bottom') =>
    bordersSd ? ` ± ${bordersSd[side].toFixed(2)}` : '';
  return (
    <>
      <Fact name="left : right">
        {sayShares(leftRight)} ± {sd[0].toFixed(1)} %
      </Fact>
      <Fact name="top : bottom">
        {sayShares(topBottom)} ± {sd[1].toFixed(1)} %
      </Fact>
      {borders ? (
        <Fact name="borders">
          {(['left', 'right', 'top', 'bottom'] as const)
            .map((side) => `${side} ${borders[side].toFixed(2)}${doubt(side)}`)
            .join(', ')}{' '}
          mm
        </Fact>
      ) : null}
      <Fact name="turn of the print">
        {(Math.round(rotation * 100) / 100 || 0).toFixed(2)} ± {rotationSd.toFixed(2)}°
      </Fact>
    </>
  );
}

function Fact({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
