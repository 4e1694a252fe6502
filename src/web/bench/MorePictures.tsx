import { useState } from 'react';
import { useMorePictures } from '../wire/index.ts';
import { type Dropped, PictureDrop, wrongPictures } from './PictureDrop.tsx';
import type { CopyWork } from './useCopyWork.ts';

/** Further pictures of a copy that lies on the bench; those that are there stay as they are. */
export function MorePictures({ work: { copy } }: { readonly work: Pick<CopyWork, 'copy'> }) {
  const [pictures, setPictures] = useState<readonly Dropped[]>([]);
  const { add, stage, trouble, busy } = useMorePictures(copy.id);
  const taken = copy.pictures.map(({ name }) => name.replace(/\.[^.]+$/, ''));
  const wanted = pictures.filter(({ role }) => role !== '');
  const wrong = wrongPictures(pictures);
  const keep = async () => {
    if (await add(wanted)) setPictures([]);
  };
  return (
    <div className="new-copy">
      <PictureDrop pictures={pictures} taken={taken} change={setPictures} />
      {wrong || trouble ? (
        <p className="trouble" role="alert">
          {wrong || trouble}
        </p>
      ) : null}
      {wanted.length > 0 ? (
        <div className="acts">
          <button
            type="button"
            className="choice chosen"
            disabled={busy || wrong !== ''}
            onClick={keep}
          >
            Keep and measure
          </button>
          <span className="detail" aria-live="polite">
            {stage}
          </span>
        </div>
      ) : null}
    </div>
  );
}
