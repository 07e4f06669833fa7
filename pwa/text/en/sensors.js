// Sensors of a place: what they are called, how they are, and their token.

export const sensorsText = {
  title: 'Sensors',
  about: 'A sensor that sends over the network tells warmth and humidity by itself, with a token of its own.',
  none: 'No sensor here.',
  add: 'Add a sensor',
  name: 'Name of the sensor',
  unit: 'It measures in',
  make: 'Make its token',
  once: 'Its token, shown only now. Copy it into the sensor:',
  copy: 'Copy the token',
  copied: 'Copied.',
  address: (/** @type {string} */ url) => `It sends to ${url}`,
  end: 'End it',
  end_sure: 'Its token opens nothing from then on; what it measured stays.',
  keep: 'Keep it',
  never: 'Nothing has come from it yet',
  heard: (/** @type {string} */ when) => `Last heard ${when}`,
  away: (/** @type {string} */ when) => `Says it is offline since ${when}`,
  broken: (/** @type {string} */ when) => `Measures nonsense since ${when}: look at its cable and power`,
  now: (/** @type {string} */ what) => `In the last hour: ${what}`,
  offline: 'Sensors are shown when there is a connection.',
};
