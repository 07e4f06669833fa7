// After the first colony: its plan, and the home screen.

export const welcomeText = {
  title: (/** @type {string} */ name) => `${name} is on the shelf`,
  plan: 'The plan',
  wait: 'The plan comes with the next connection.',
  nothing: 'Nothing is due. Leave them their quiet.',
  install: 'Put it on your home screen',
  why_install:
    'It then opens like any app, works at the shelf without a signal, and keeps your logs safe from tidying ' +
    'browsers.',
  installed: 'It is on this home screen already.',
  go: 'Go to the round',
  again: 'Add another colony',
  ios: [
    'Tap the share button of Safari (the square with the arrow).',
    'Choose “Add to Home Screen”, then “Add”.',
    'Open Broodshelf from there. It keeps a memory of its own: claim or join in it, or let it in from Safari ' +
      'with House, “Let a new phone in”.',
  ],
  android: [
    'Open the menu of the browser (three dots).',
    'Choose “Install app” or “Add to Home screen”.',
    'Open Broodshelf from there.',
  ],
  desktop: [
    'Chrome or Edge: the install button at the end of the address bar.',
    'Safari on a Mac: File, then “Add to Dock”.',
    'Firefox on a desk: a bookmark does it.',
  ],
  now: 'Install it now',
};
