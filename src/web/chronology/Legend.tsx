import { useBook } from '../app/context.ts';
import { Mark } from '../marks/index.ts';

/** What the marks mean; none means anything by its colour alone. */
export function Legend() {
  const held = useBook().held.size > 0;
  return (
    <dl className="legend">
      <Item name="probability of the day">
        <rect className="ink" x="4" y="2" width="3" height="12" />
        <rect className="ink" x="10" y="2" width="8" height="12" fillOpacity="0.3" />
      </Item>
      <Item name="a claim that agrees">
        <path className="agrees" d="M11 4v8" />
      </Item>
      <Item name="a slip">
        <path className="slips" d="M8 5l6 6m0 -6l-6 6" />
      </Item>
      <Item name="a month or year">
        <path className="agrees" d="M3 8H19M3 6v4M19 6v4" />
      </Item>
      <Item name="a cover or label">
        <path className="agrees" d="M3 5v6H19v-6" />
      </Item>
      <Item name="by then; not before">
        <path className="agrees" d="M8 4v8h-5M14 4v8h5" />
      </Item>
      {held ? (
        <div>
          <dt>
            <Mark sure />
          </dt>
          <dd>you hold a copy</dd>
        </div>
      ) : null}
    </dl>
  );
}

function Item({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <div>
      <dt>
        <svg className="axis" width="22" height="16" viewBox="0 0 22 16" aria-hidden="true">
          {children}
        </svg>
      </dt>
      <dd>{name}</dd>
    </div>
  );
}
