/** Columns of every table of the demo dossier, in the order in which they are written. */
export const COLUMNS: Readonly<Record<string, string>> = {
  'printings.csv':
    'id subject language market product number finish edition wave art channel printed_name reading also_called rarity printed_in part_of replaced_by',
  'products.csv': 'id title kind market series issue list_price currency',
  'contents.csv': 'product printing odds',
  'traits.csv': 'of trait value sees region publish',
  'counterfeits.csv': 'id printing kind known_since note',
  'sources.csv': 'id title kind citation url accessed archived cites service publish',
  'claims.csv': 'printing product source property value locator quote stated_on read_on note',
  'orders.csv': 'earlier later reason',
  'services.csv': 'id title grades top off_scale',
  'population.csv': 'service as_of label printing grade count',
  'certificates.csv': 'service from to period',
  'sales.csv': 'date printing service grade certificate kind price currency venue lot note',
  'sightings.csv': 'date printing service certificate label grade serial where',
  'supply.csv': 'as_of venue printing raw graded',
  'searches.csv': 'day where for found cost',
  'rates.csv': 'date currency per_eur',
  'pictures.csv': 'file of role side taken by dpi sha256 known_by rights publish',
  'corrections.csv': 'id received from credit says about answer state revision',
  'desk/copies.csv':
    'id printing status parcel bought price currency service certificate grade label serial described_as listing provenance note',
  'desk/parcels.csv':
    'id seller venue purchase_no origin shipped_by tracking shipping insurance currency declared tax_paid bank_rate',
  'desk/events.csv': 'at copy parcel what with amount currency file note',
  'desk/deadlines.csv': 'copy parcel against starts_from starts_on days counts done',
  'desk/observations.csv': 'copy trait value sees note',
  'desk/tiers.csv':
    'service tier fee currency max_value upcharge min_copies days return_shipping outward_shipping ungraded_fee valid_from',
  'desk/batches.csv': 'batch copy service tier sent declared back outcome grade certificate',
  'desk/wants.csv': 'printing service grade max_price currency note',
};
