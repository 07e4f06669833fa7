// Nudges on this phone.

export const nudgesText = {
  title: 'Nudges on this phone',
  last: (/** @type {string} */ when) => `The last one came ${when}.`,
  none: 'None has come yet.',
  silent: (/** @type {string} */ name) => `${name} has not answered for a while: open the app on it.`,
  somebody: 'Somebody',
  elsewhere: /** @type {Record<string, (who: string, phone: string) => string>} */ ({
    unheard: (who, phone) => `Nudges do not reach ${who} (${phone}): ask them to open the app on it.`,
    unseen: (who, phone) => `${who} has not opened the app for a month (${phone}), so nudges may have stopped there.`,
  }),
  ask: 'Tell me when something is due',
  test: 'Send a test',
  stop: 'Turn off here',
  state: /** @type {Record<string, string>} */ ({
    unsupported: 'This browser cannot receive nudges. The round here is always up to date when you open the app.',
    install_first:
      'On an iPhone or iPad put the app on the home screen first: Share, then Add to Home Screen. Open it there ' +
      'and come back to this page.',
    denied: 'Nudges are blocked for this app in the browser’s settings. Allow notifications there, then come back.',
    off: 'Nudges are off. When something is due at your care hours, this phone can tell you.',
    on: 'Nudges come to this phone.',
  }),
  tested: /** @type {Record<string, string>} */ ({
    waiting: 'Sent; waiting for this phone to say that it came…',
    heard: 'It came. Nudges work on this phone.',
    silent: 'It did not come.',
  }),
};
