// The words of the first start: claiming, joining, a pass.
import { count } from './counted.js';

export const startText = {
  welcome: 'Every colony fed, watered and looked in on.',
  what: 'Broodshelf keeps the round of your ant shelf: what is due, how much, and why. It works without a signal.',
  have_code: 'I have the server’s code',
  join_one: 'Join a shelf that exists',
  have_pass: 'I was handed a pass',
  back: 'Back',
  claim: 'Claim this shelf',
  code: 'Code',
  code_hint: 'the server printed it when it started',
  your_name: 'Your name',
  more: 'Name of the shelf and time zone',
  shelf_name: 'Name of the shelf',
  our_shelf: 'Our shelf',
  zone: 'Time zone',
  claim_it: 'Claim it',
  known: (/** @type {string} */ name) => `Welcome back, ${name}`,
  come_in: 'Come in',
  join: 'Join a shelf',
  join_how: 'On a phone that is signed in, open House and type this code, or scan it there.',
  waiting: 'Waiting for a keeper…',
  pass: 'Open a pass',
  pass_hint: 'the keeper gave it to you',
  open_pass: 'Open the pass',
  handed: 'You were handed a shelf',
  handed_what: 'This phone can look after some colonies for some days. No account is needed.',
  only_a_look: (/** @type {number} */ n, /** @type {string} */ from, /** @type {string} */ to) =>
    `You are signed in as a keeper, so this is only a look: the pass is for ${count(n, 'colony', 'colonies')}, ` +
    `${from} to ${to}.`,
};
