/** The home of the invented collector. */
export const DESK = { currency: 'EUR', country: 'FI', regret_limit: 0.2 };

const HOUSE = {
  valid_from: '2026-01-01',
  currency: 'EUR',
  duty_rate: 0,
  duty_free_below: 150,
  tax_free_below: 0,
  payment_fee_rate: 0.01,
  selling_fee_rate: 0.09,
  return_shipping: 12,
  per: 'parcel',
};

/** Charges as the invented collector entered them; no country’s true terms. */
export const CHARGES = [
  {
    origin: '',
    carrier: '',
    tax_rate: 0.21,
    tax_base: 'goods+shipping+duty',
    handling_fee: 4,
    ...HOUSE,
  },
  {
    origin: 'GB',
    carrier: 'tracked letter',
    tax_rate: 0.21,
    tax_base: 'goods+shipping',
    handling_fee: 3.2,
    ...HOUSE,
  },
  {
    origin: 'KR',
    carrier: '',
    tax_rate: 0.21,
    tax_base: 'goods+shipping+duty',
    handling_fee: 5.5,
    ...HOUSE,
    duty_rate: 0.02,
  },
  {
    origin: 'BR',
    carrier: '',
    tax_rate: 0.21,
    tax_base: 'goods',
    handling_fee: 5.5,
    ...HOUSE,
    return_shipping: 21,
  },
];
