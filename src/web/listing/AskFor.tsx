import { sayTrait } from '../../catalogue/index.ts';
import type { IdentifyAnswer } from '../../contract/index.ts';
import { CardPlace } from '../identify/CardPlace.tsx';
import { sayBox } from '../identify/Looks.tsx';

/** Looks that a seller's picture can stand in for. */
const PICTURED = new Set(['eye', 'loupe', 'scan', 'lamp']);

/** The picture to ask the seller for next: of the trait that tells most for its effort. */
export function AskFor({ answer }: { readonly answer: IdentifyAnswer }) {
  const best = answer.next.find(({ sees }) => PICTURED.has(sees));
  return (
    <section>
      <h2>Ask the seller for</h2>
      {best ? (
        <div className="ask-for">
          <CardPlace card={answer.card} region={best.region} side={best.side} />
          <p>
            a sharp picture of the {best.side}
            {sayBox(best.region)}: it would show <mark>“{sayTrait(best.trait)}”</mark>. An unedited
            one, of the very copy, with the day written beside it.
          </p>
        </div>
      ) : (
        <p className="empty">No picture would tell its printing more surely.</p>
      )}
    </section>
  );
}
