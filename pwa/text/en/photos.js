// Pictures.

export const photosText = {
  title: 'Pictures',
  take: 'Take a picture',
  busy: 'One moment…',
  remove: 'Take this picture out',
  unreadable: 'This picture could not be read. Try another, or take it again.',
  of: (/** @type {string} */ name, /** @type {string} */ day) => `${name} on ${day}`,
  large: (/** @type {string} */ day) => `Look at the picture of ${day}`,
  older: 'Older',
  newer: 'Newer',
  elsewhere: 'This picture is still on the phone that took it.',
};
