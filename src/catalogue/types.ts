/**
 * One issue of the subject that collectors tell apart. A field that is missing is not known; the
 * word `none` means that it is known to have none.
 */
export interface Printing {
  readonly id: string;
  readonly subject?: string;
  /** BCP 47 tag. */
  readonly language?: string;
  /** ISO 3166-1 alpha-2 code or a plain word. */
  readonly market?: string;
  /** Id of a product, or plain words. */
  readonly product?: string;
  readonly number?: string;
  readonly finish?: string;
  readonly edition?: string;
  readonly wave?: string;
  readonly art?: string;
  readonly channel?: string;
  readonly printed_name?: string;
  readonly reading?: string;
  readonly also_called?: string;
  readonly rarity?: string;
  readonly printed_in?: string;
  /** The printing that this one is a part of. */
  readonly part_of?: string;
  /** The id that took the place of this one. */
  readonly replaced_by?: string;
}

/** What a printing was sold or given in: a box, a game, a number of a periodical. */
export interface Product {
  readonly id: string;
  readonly title?: string;
  readonly kind?: string;
  readonly market?: string;
  /** The periodical or line that the product is a number of. */
  readonly series?: string;
  readonly issue?: string;
  readonly list_price?: string;
  readonly currency?: string;
}

/** A printing that lies in a product. */
export interface Content {
  readonly product: string;
  readonly printing: string;
  /** Chance in one sealed product, between 0 and 1. */
  readonly odds?: number;
}
