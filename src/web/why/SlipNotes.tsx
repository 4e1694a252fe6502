import { sayEdtf, sayList } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { type DatedPrinting, sourceName } from '../view/index.ts';
import { isDateProperty, propertyName } from '../words/index.ts';

/** The slips of a printing in a sentence each; what they took for what. */
export function SlipNotes({ dated }: { readonly dated: DatedPrinting }) {
  const book = useBook();
  const groups = new Map<string, { sources: string[]; property: string; explanation: string }>();
  for (const claim of dated.claims) {
    if (!claim.slip) continue;
    const key = `${claim.value}\u0000${claim.explanation}`;
    const group = groups.get(key);
    const source = sourceName(book, claim.source);
    if (group) group.sources.push(source);
    else groups.set(key, { ...claim, sources: [source] });
  }
  return [...groups].map(([key, { sources, property, explanation }]) => (
    <p key={key} className="slip-note">
      <strong>Slip.</strong> {sayList([...new Set(sources)])} ({propertyName(property)}{' '}
      {said(property, key.split('\u0000')[0] ?? '')}): {explanation}
      {/[.!?]$/.test(explanation) ? '' : '.'}
    </p>
  ));
}

function said(property: string, value: string): string {
  return isDateProperty(property) ? sayEdtf(value) : value;
}
