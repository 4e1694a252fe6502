import {
  Button,
  Menu,
  MenuItem,
  MenuTrigger,
  Popover,
  type Selection,
} from 'react-aria-components';
import { nameOfCode } from '../../catalogue/index.ts';
import { useBook } from '../app/context.ts';
import {
  type Book,
  choicesOf,
  FILTER_COLUMNS,
  type Filter,
  type FilterColumn,
  sourceName,
} from '../view/index.ts';

interface Props {
  readonly filter: Filter;
  readonly set: (filter: Filter) => void;
}

const ANY: Record<FilterColumn, string> = {
  language: 'All languages',
  market: 'All markets',
  finish: 'Any finish',
  source: 'Any source',
};

function sayChoice(book: Book, column: FilterColumn, value: string): string {
  if (value === '') return 'not known';
  if (column === 'language') return nameOfCode(value, 'language');
  if (column === 'market') return nameOfCode(value, 'region');
  return column === 'source' ? sourceName(book, value) : value;
}

/** What the chronology shows, and in which order. */
export default function Filters({ filter, set }: Props) {
  return (
    <div className="filters">
      {FILTER_COLUMNS.map((column) => (
        <Choice key={column} column={column} filter={filter} set={set} />
      ))}
      <button
        type="button"
        className="choice"
        aria-pressed={filter.order === 'dossier'}
        onClick={() =>
          set({ ...filter, order: filter.order === 'release' ? 'dossier' : 'release' })
        }
      >
        {filter.order === 'release' ? 'In order of release' : 'In the dossier’s order'}
      </button>
    </div>
  );
}

function Choice({ column, filter, set }: Props & { readonly column: FilterColumn }) {
  const book = useBook();
  const choices = choicesOf(book, column);
  const chosen = filter[column];
  if (choices.length < 2) return null;
  const choose = (keys: Selection) => {
    const values = keys === 'all' ? [] : [...keys].map((key) => String(key).slice(1));
    set({ ...filter, [column]: values });
  };
  const label =
    chosen.length === 0
      ? ANY[column]
      : chosen.map((value) => sayChoice(book, column, value)).join(', ');
  return (
    <MenuTrigger>
      <Button className={chosen.length > 0 ? 'choice chosen' : 'choice'}>{label}</Button>
      <Popover className="menu" placement="bottom start">
        <Menu
          aria-label={ANY[column]}
          selectionMode="multiple"
          selectedKeys={chosen.map((value) => `=${value}`)}
          onSelectionChange={choose}
        >
          {choices.map((value) => (
            <MenuItem key={value} id={`=${value}`} textValue={sayChoice(book, column, value)}>
              {({ isSelected }) => (
                <>
                  <span className="check" aria-hidden="true">
                    {isSelected ? '×' : ''}
                  </span>
                  {sayChoice(book, column, value)}
                </>
              )}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
