// The diary.

export const diaryText = {
  empty: 'Nothing logged yet.',
  earlier: 'Earlier',
  void: 'Void',
  search: 'Find in the diary',
  kinds: 'Show',
  all: 'Everything',
  none: 'Nothing like this in the diary.',
  looking: (/** @type {string} */ day) => `Looking back to ${day} …`,
  today: 'Today',
  yesterday: 'Yesterday',
};
