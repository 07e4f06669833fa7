// Colonies as lists and labels show them: in the order of their numbers, and by the name of their species.
import { catalogue, rowsOf } from '../signals/rows.js';
import { shelfText } from '../text/en/shelf.js';

/** Colonies by the number on their vessel. */
export const coloniesInOrder = () =>
  rowsOf('colony').sort((a, b) => (a.set.number ?? Infinity) - (b.set.number ?? Infinity) || (a.id < b.id ? -1 : 1));

/** @param {{species_code?: string | null, species_name?: string | null}} colony */
export const speciesOf = (colony) =>
  catalogue.value?.species?.[colony.species_code ?? '']?.name ?? colony.species_name ?? shelfText.species_unknown;
