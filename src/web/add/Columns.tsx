import { useId } from 'react';
import type { Cells } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Field } from '../claims/Field.tsx';
import { ProductField } from './ProductField.tsx';
import { type Addable, ASKED, type Asked, knownIn } from './rows.ts';

interface Props {
  readonly what: Addable;
  readonly cells: Cells;
  readonly set: (cells: Cells) => void;
}

/** A field for each column that is asked; a product that is chosen brings its market along. */
export function Columns({ what, cells, set }: Props) {
  const { products } = useBook();
  const choose = (product: string) => {
    const before = products.get(cells.product ?? '')?.cells.market ?? '';
    const market = (cells.market ?? '') === before ? undefined : cells.market;
    set({ ...cells, product, market: market ?? products.get(product)?.cells.market ?? '' });
  };
  return ASKED[what].map((asked, at) =>
    asked.column === 'product' ? (
      <ProductField key={asked.column} hint={asked.hint ?? ''} set={choose} />
    ) : (
      <Column
        key={asked.column}
        what={what}
        asked={asked}
        first={at === 0}
        value={cells[asked.column] ?? ''}
        set={(value) => set({ ...cells, [asked.column]: value })}
      />
    ),
  );
}

interface ColumnProps {
  readonly what: Addable;
  readonly asked: Asked;
  readonly first: boolean;
  readonly value: string;
  readonly set: (value: string) => void;
}

function Column({ what, asked: { column, label, hint }, first, value, set }: ColumnProps) {
  const { dossier } = useBook();
  const list = useId();
  return (
    <Field label={label} {...(hint === undefined ? {} : { hint })}>
      {(ties) => (
        <>
          <input
            {...ties}
            list={list}
            value={value}
            // biome-ignore lint/a11y/noAutofocus: the dialog was opened to fill in this field
            autoFocus={first}
            onChange={(event) => set(event.target.value)}
          />
          <datalist id={list}>
            {knownIn(what, column, dossier).map((known) => (
              <option key={known} value={known} />
            ))}
          </datalist>
        </>
      )}
    </Field>
  );
}
