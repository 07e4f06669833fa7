// Colonies as lists and labels show them: in the order of their numbers, and by the name of their species.
import { rowsOf } from '../signals/rows.js';
import { say, sayIf } from '../words/say.js';

/** Colonies by the number on their vessel. */
export const coloniesInOrder = () =>
  rowsOf('colony').sort((a, b) => (a.set.number ?? Infinity) - (b.set.number ?? Infinity) || (a.id < b.id ? -1 : 1));

/** @param {{species_code?: string | null, species_name?: string | null}} colony */
export const speciesOf = (colony) =>
  sayIf('species', colony.species_code) || (colony.species_name ?? say('shelf-species-unknown'));
