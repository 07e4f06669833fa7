// A founding that has stalled, with what keepers do (common practice). Fetched with the brood.
import { count } from './counted.js';

export const stalledText = {
  title: 'This founding has probably stalled',
  days: (/** @type {number} */ d) =>
    `In nine of ten foundings like this one workers would have come ${count(d, 'day')} ago or sooner.`,
  about: 'What keepers do, in this order (common practice):',
  /** A queen who founds on her own reserves. */
  unfed: [
    'Leave the tube dark and alone for two weeks, in the middle of the warmth that her kind likes. Many queens eat ' +
      'their brood because they are looked at often.',
    'Do not feed her in these weeks: she lives on her own reserves, and food spoils beside her.',
    'Then look once. Brood that has moved on, say larvae where eggs were, needs only more time.',
    'No brood, or less than before: offer a drop of sugar water and a speck of insect, and take out after a day ' +
      'what is left. A queen who has eaten her brood may lay again.',
  ],
  /** A queen who founds with food. */
  fed: [
    'Leave her dark and quiet, in the middle of the warmth that her kind likes, and look once a week at most.',
    'Go on feeding: sugar and a small insect every 3 to 5 days, and take out after a day what is left. A hungry ' +
      'queen eats her brood.',
    'After two weeks look closely. Brood that has moved on, say larvae where eggs were, needs only more time.',
  ],
  last: [
    'Water gone, or mould near the brood: lay a fresh tube before hers and let her move by herself.',
    'No eggs for six to eight warm weeks: she was probably never mated, or is spent. Brood of her own species ' +
      'from a healthy colony is the last thing to try.',
  ],
};
