// The shelf and its list of colonies.

export const shelfText = {
  title: 'The shelf',
  search: 'Find a colony',
  none: 'No colony has this in its name or species.',
  labels: 'Tube labels',
  scan: 'Scan a label',
  species_unknown: 'Species not given',
  no_plan: 'The plan comes with the next connection.',
};
