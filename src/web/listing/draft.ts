import type { ListingRequest, WireChange } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';

/** What is asked of a listing, as it is typed. */
export type ListingDraft = Omit<ListingRequest, 'on'>;

/** Before anything is typed. */
export const EMPTY: ListingDraft = {
  ...{ words: '', price: '', currency: '', origin: '', shippedBy: '', shipping: '' },
  ...{ service: '', grade: '' },
};

/** The draft as it is sent: amounts with a point, codes in capitals. */
export function plainListing(draft: ListingDraft): ListingDraft {
  const plain = (text: string) => text.trim().replace(',', '.');
  return {
    words: draft.words.trim(),
    price: plain(draft.price),
    shipping: plain(draft.shipping),
    currency: draft.currency.trim().toUpperCase(),
    origin: draft.origin.trim().toUpperCase(),
    shippedBy: draft.shippedBy.trim(),
    service: draft.service.trim(),
    grade: draft.grade.trim(),
  };
}

const AMOUNT = /^\d{1,12}(\.\d{1,6})?$/;

/** What is wrong with a listing, in a sentence; empty where nothing is. */
export function wrongListing(draft: ListingDraft): string {
  const { words, price, shipping, currency, origin } = plainListing(draft);
  if (words === '') return 'Paste the seller’s words.';
  if (!AMOUNT.test(price)) return 'The price is a number such as 540 or 12.50.';
  if (!/^[A-Z]{3}$/.test(currency)) return 'The currency is three letters such as EUR.';
  if (shipping !== '' && !AMOUNT.test(shipping)) return 'Shipping is a number, or left empty.';
  if (!/^([A-Z]{2})?$/.test(origin)) return 'The country is two letters such as BR, or left empty.';
  return '';
}

/** The rows that keep a listing on the desk as an offered copy, with a parcel where one is told. */
export function keepingStep(draft: ListingDraft, id: string, printing: string): Step {
  const { words, price, currency, origin, shippedBy, shipping, service, grade } =
    plainListing(draft);
  const hasParcel = origin !== '' || shippedBy !== '' || shipping !== '';
  const parcel = hasParcel ? `${id}-parcel` : '';
  const add = (file: string, after: Record<string, string>): WireChange => ({
    ...{ file, op: 'add', after },
  });
  const copy = { id, printing, status: 'offered', parcel, price, currency, service, grade };
  return {
    label: `Keep the listing as ${id}`,
    changes: [
      add('desk/copies.csv', { ...copy, listing: words }),
      ...(hasParcel
        ? [
            add('desk/parcels.csv', {
              ...{ id: parcel, origin, shipped_by: shippedBy, shipping },
              currency: shipping === '' ? '' : currency,
            }),
          ]
        : []),
    ],
  };
}
