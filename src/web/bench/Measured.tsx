import type { BenchFace } from '../../contract/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { sayShares, WHY_BORDER, WHY_SHARES, whySize } from './dimensions.ts';

interface Props {
  readonly face: BenchFace;
  readonly title?: string;
}

/** The measurements of a face in words and numbers, as the drawing shows them. */
export function Measured({ face: { size, frame, outline }, title = 'Measured' }: Props) {
  if (!outline || outline.p < 0.5) return null;
  return (
    <section>
      <h3>{title}</h3>
      <dl className="facts">
        {size ? (
          <Fact name="size" why={whySize(size)}>
            {size.sd
              ? `${size.mm[0].toFixed(2)} ± ${sayDoubt(size.sd[0], 2)} by ${size.mm[1].toFixed(2)} ± ${sayDoubt(size.sd[1], 2)} mm`
              : `${size.mm.join(' by ')} mm, as the dossier tells`}
          </Fact>
        ) : null}
        {frame ? <FrameFacts frame={frame} /> : <Fact name="centering">No frame was found.</Fact>}
        <Fact
          name="outline"
          why={
            outline.byHand
              ? 'All else is measured by the corners that you set.'
              : 'Probability that every corner lies within half a percent of the card’s width.'
          }
        >
          {outline.byHand ? 'set by hand' : `probability ${outline.p.toFixed(2)}`}
        </Fact>
      </dl>
    </section>
  );
}

function FrameFacts({ frame }: { readonly frame: NonNullable<BenchFace['frame']> }) {
  const { borders, bordersSd, leftRight, topBottom, sd, rotation, rotationSd } = frame;
  const doubt = (side: 'left' | 'right' | 'top' | 'bottom') =>
    bordersSd ? ` ± ${sayDoubt(bordersSd[side], 2)}` : '';
  return (
    <>
      <Fact name="left : right" why={WHY_SHARES}>
        {sayShares(leftRight)} ± {sayDoubt(sd[0], 1)} %
      </Fact>
      <Fact name="top : bottom" why={WHY_SHARES}>
        {sayShares(topBottom)} ± {sayDoubt(sd[1], 1)} %
      </Fact>
      {borders ? (
        <Fact name="borders" why={WHY_BORDER}>
          {(['left', 'right', 'top', 'bottom'] as const)
            .map((side) => `${side} ${borders[side].toFixed(2)}${doubt(side)}`)
            .join(', ')}{' '}
          mm
        </Fact>
      ) : null}
      <Fact name="turn of the print" why={WHY_TURN}>
        {(Math.round(rotation * 100) / 100 || 0).toFixed(2)} ± {sayDoubt(rotationSd, 2)}°
      </Fact>
    </>
  );
}

const WHY_TURN =
  'How far the printed frame is turned against the card’s sides, clockwise as you read it. The doubt holds 95 of 100.';

interface FactProps {
  readonly name: string;
  readonly why?: string;
  readonly children: React.ReactNode;
}

function Fact({ name, why, children }: FactProps) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{why ? <Num why={why}>{children}</Num> : children}</dd>
    </div>
  );
}
