import { type ColumnType, typeNamed } from './schema-types.ts';

/** A table of the folder. Its columns may stand in any order, and others beside them. */
export interface TableSpec {
  readonly file: string;
  readonly columns: ReadonlyMap<string, ColumnType>;
  /** Columns without which the table says nothing. */
  readonly header: readonly string[];
  /** Columns whose cell must be there and right, or the row is left out. */
  readonly must: ReadonlySet<string>;
  /** Columns that may be empty, but whose fault spoils the row. */
  readonly key: ReadonlySet<string>;
}

/** The keys of a JSON file: of its one object, or of each entry of its list. */
export interface DocumentSpec {
  readonly file: string;
  readonly list: boolean;
  readonly keys: ReadonlyMap<string, ColumnType>;
}

const MEASURES = 'centering/corner-wear/edge-wear/scratch/dent/crease/speck/print-line/stain';
const SEES = 'eye/loupe/scan/scales/calliper/lamp/ultraviolet/through-light';

/**
 * All tables, in the order in which their faults are listed: `column` (text) or `column:type`, words
 * with `/` between them. `!` must be there and right, or the row is left out; `*` may be empty, but
 * a fault in it spoils the row; `^` must be in the header. Elsewhere a fault spoils its cell only.
 */
const TABLE_ROWS: Readonly<Record<string, string>> = {
  'printings.csv':
    'id:id! subject language:language market product number finish edition wave art channel printed_name reading also_called rarity printed_in part_of:a-printing replaced_by:a-printing',
  'products.csv': 'id:id! title kind market series issue list_price:money currency:currency',
  'contents.csv': 'product:product! printing:printing! odds:odds',
  'traits.csv': `of:bearer* trait value:trait-value sees:${SEES} region publish:yes/no`,
  'counterfeits.csv':
    'id:id! printing:printing kind:counterfeit/alteration/case known_since:edtf note',
  'sources.csv':
    'id:id! title kind:source-kind citation url accessed:edtf archived cites:sources service:service publish:yes/no',
  'claims.csv':
    'printing:printing* product:product* source:source* property:property! value^ locator quote stated_on:edtf read_on:edtf note',
  'orders.csv': 'earlier:printing! later:printing! reason',
  'weekdays.csv': 'market channel weekdays:weekdays! from:edtf* to:edtf* note',
  'services.csv': 'id:id! title grades top off_scale',
  'population.csv': 'service:service* as_of:edtf* label printing:printing grade count:count*',
  'certificates.csv': 'service:service* from to period:edtf*',
  'sales.csv':
    'date:edtf* printing:printing* service:service grade certificate kind:sold/asking/unpaid price:money* currency:currency* venue lot note',
  'sightings.csv':
    'date:edtf* printing:printing* service:service certificate label grade serial where',
  'supply.csv': 'as_of:edtf venue printing:printing* raw:count graded:count',
  'searches.csv': 'day:edtf where for found cost',
  'rates.csv': 'date:edtf* currency:currency* per_eur:positive*',
  'pictures.csv':
    'file:path* of:pictured role:reference/evidence/listing/arrival/lamp/illustration side taken:time by dpi:positive sha256:sha256 known_by rights publish:yes/no',
  'corrections.csv': 'id:id! received:edtf from credit says about answer state revision',
  'desk/copies.csv':
    'id:id! printing:printing status:offered/bought/arrived/kept/disputed/returned/submitted/sold parcel:parcel bought:edtf price:money currency:currency service:service certificate grade label serial described_as listing provenance note',
  'desk/parcels.csv':
    'id:id! seller venue purchase_no origin shipped_by tracking shipping:money insurance:money currency:currency declared:money tax_paid:money bank_rate:positive',
  'desk/events.csv':
    'at:time copy:copy* parcel:parcel* what with amount:money currency:currency file:path note',
  'desk/deadlines.csv':
    'copy:copy* parcel:parcel* against starts_from starts_on:edtf* days:count* counts:calendar/working done',
  'desk/observations.csv': `copy:copy* trait value:trait-value sees:${SEES} note`,
  'desk/tiers.csv':
    'service:service* tier fee:money* currency:currency* max_value:money upcharge min_copies:count days:count return_shipping:money outward_shipping:money ungraded_fee:money valid_from:edtf',
  'desk/batches.csv':
    'batch copy:copy* service:service* tier sent:edtf declared:money back:edtf outcome grade certificate',
  'desk/thresholds.csv': `service:service* grade! side:front/back! measure:${MEASURES}! at_most:number!`,
  'desk/words.csv': `words! side:front/back* measure:${MEASURES}! at_most:number*`,
  'desk/wants.csv':
    'printing:printing* service:service grade max_price:money currency:currency note',
};

/** A row of any table may say whose word it is, and where it stands. */
const ANY_ROW: ReadonlyMap<string, ColumnType> = columnsOf('source:source locator');

function columnsOf(row: string): ReadonlyMap<string, ColumnType> {
  return new Map(
    row.split(' ').map((item) => {
      const [name = '', type = 'text'] = item.replace(/[!*^]$/, '').split(':');
      return [name, typeNamed(type)];
    }),
  );
}

function marked(row: string, mark: RegExp): string[] {
  return row.split(' ').flatMap((item) => (mark.test(item) ? item.split(/[:!*^]/)[0]! : []));
}

/** All tables of a dossier, in the order in which their faults are listed. */
export const TABLES: readonly TableSpec[] = Object.entries(TABLE_ROWS).map(([file, row]) => ({
  file,
  columns: columnsOf(row),
  header: marked(row, /[!^]$/),
  must: new Set(marked(row, /!$/)),
  key: new Set(marked(row, /\*$/)),
}));

const NUMBERS = 'duty_free_below tax_free_below handling_fee payment_fee_rate selling_fee_rate';

/** JSON files with keys of their own; examinations and set-ups of pictures are read as they are. */
export const DOCUMENTS: readonly DocumentSpec[] = [
  {
    file: 'desk/desk.json',
    list: false,
    keys: columnsOf('currency:currency country regret_limit:number'),
  },
  {
    file: 'desk/charges.json',
    list: true,
    keys: columnsOf(
      `origin carrier valid_from:edtf duty_rate:number tax_rate:number tax_base:goods/goods+shipping/goods+shipping+duty currency:currency return_shipping:number per:parcel/ ${NUMBERS.replaceAll(/(\w+)/g, '$1:number')}`,
    ),
  },
];

const byFile = new Map(TABLES.map((spec) => [spec.file, spec]));

/** The table of that name, if a dossier has one. */
export function specOf(file: string): TableSpec | undefined {
  return byFile.get(file);
}

/** Type of a column of a table; undefined for columns that the format does not name. */
export function typeOf(spec: TableSpec, column: string): ColumnType | undefined {
  return spec.columns.get(column) ?? ANY_ROW.get(column);
}

/** The position of a file in the list of tables, documents last: faults are listed in this order. */
export function rankOf(file: string): number {
  if (file === 'dossier.json') return -1;
  const rank = TABLES.findIndex((spec) => spec.file === file);
  return rank < 0 ? TABLES.length : rank;
}
