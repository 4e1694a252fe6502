import { Marked } from '../marks/index.ts';
import { Clock } from './Clock.tsx';
import { Described } from './Described.tsx';
import { MarkTable } from './MarkTable.tsx';
import { Measured } from './Measured.tsx';
import { PaperLists } from './Paper.tsx';
import { Proof } from './Proof.tsx';
import { sayFound } from './tell.ts';
import type { CopyWork } from './useCopyWork.ts';

/** The sheet at the right: what the pictures say of the copy. */
export function FoundSheet({ work }: { readonly work: CopyWork }) {
  const { seen: copy, side } = work;
  const face = copy[side];
  return (
    <aside className="why-sheet found-sheet" aria-labelledby="found-heading">
      <h2 id="found-heading">What was found</h2>
      <Marked why={sayFound(copy)} />
      {face ? (
        <div className="on-screen">
          <MarkTable work={work} face={face} />
          <Measured face={face} />
        </div>
      ) : null}
      <PaperLists work={work} />
      <Described described={copy.described} listing={copy.listing} />
      <Proof {...copy} />
      <Clock clock={copy.clock} />
    </aside>
  );
}
