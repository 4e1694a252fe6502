import type { Advised } from '../../contract/index.ts';
import { cautionsOf } from './tell.ts';

/** What has to be known with the advice on a copy, or on all of them. */
export function Cautions({ copy }: { readonly copy: Advised | undefined }) {
  return (
    <section className="cautions">
      <h3>Before you act</h3>
      {cautionsOf(copy).map((caution) => (
        <p key={caution} className="detail">
          {caution}
        </p>
      ))}
    </section>
  );
}
