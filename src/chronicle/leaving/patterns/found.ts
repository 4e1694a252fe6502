/** Something in a text that could harm when it leaves. */
export interface Found {
  readonly what: 'e-mail' | 'telephone' | 'address';
  /** As written. */
  readonly text: string;
  /** Where it begins, in UTF-16 units. */
  readonly at: number;
}
