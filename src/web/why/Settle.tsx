import { useBook } from '../app/context.ts';
import { Num } from '../marks/index.ts';
import { EXPLAIN_GAIN, sayBits } from '../words/index.ts';

/** What evidence not yet seen would settle the rest. */
export function Settle({ printing }: { readonly printing: string }) {
  const { dating } = useBook();
  const leads = (dating?.leads ?? [])
    .filter((lead) => lead.printing === printing)
    .sort((a, b) => b.gain_bits - a.gain_bits);
  if (leads.length === 0) return null;
  return (
    <section>
      <h3>What would settle it</h3>
      <ul className="rows">
        {leads.slice(0, 5).map((lead) => (
          <li key={`${lead.kind}${lead.words}`}>
            <span>{lead.words}</span>
            <Num why={EXPLAIN_GAIN}>{sayBits(lead.gain_bits)}</Num>
          </li>
        ))}
      </ul>
    </section>
  );
}
