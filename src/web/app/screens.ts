/** The screens in the order of the work. */
export const SCREENS = [
  ['/', 'Chronology'],
  ['/printings', 'Printings'],
  ['/products', 'Products'],
  ['/sources', 'Sources'],
  ['/bench', 'Bench'],
  ['/population', 'Population'],
  ['/prices', 'Prices'],
  ['/identify', 'Identify'],
  ['/decide', 'Decide'],
  ['/wants', 'Wants'],
  ['/chronicle', 'Chronicle'],
  ['/slips', 'Slips'],
  ['/leads', 'Leads'],
  ['/faults', 'Faults'],
  ['/begin', 'Begin'],
] as const;
