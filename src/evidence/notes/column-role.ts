/** What the cells of a column hold. */
export type ColumnRole =
  | 'date'
  | 'source'
  | 'what'
  | 'printing'
  | 'number'
  | 'wave'
  | 'finish'
  | 'edition'
  | 'language'
  | 'market'
  | 'product'
  | 'remark'
  | 'idle';
