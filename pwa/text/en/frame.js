// The frame around every screen: its name, the ways to the screens, banners.
import { span } from './counted.js';

export const frameText = {
  name: 'Broodshelf',
  close: 'Close',
  loading: 'One moment…',
  missing: 'This part of the app could not be loaded. Reload it; nothing that you logged is lost.',
  screens: 'Screens',
  nav: { round: 'Round', shelf: 'Shelf', larder: 'Larder', handover: 'Hand over', settings: 'House' },
  banner: {
    unsent: 'Unsent logs',
    update: 'A new version is ready.',
    update_waits: 'The new version comes when you have saved or left what you are writing here.',
    use_it: 'Use it now',
    emptied:
      'The browser had emptied its storage on this phone, so the shelf was fetched from the server again. What was ' +
      'logged here and not sent before is lost: please look through the diary, and log again what is missing.',
    understood: 'I have read it',
    signed_out: 'This phone is signed out. What it has not sent stays here.',
    clock: (/** @type {number} */ min) =>
      `This phone's clock is ${span(Math.abs(min))} ${min > 0 ? 'ahead' : 'behind'}. What is due, and when you log ` +
      `something, goes by the server's.`,
    ended: /** @type {Record<string, string>} */ ({
      pass_revoked: 'The keeper has taken this pass back. What this phone has not sent stays here for export.',
      pass_ended: 'This pass has ended. Thank you. What this phone has not sent stays here for export.',
      device_revoked: 'A keeper has signed this phone out. What it has not sent stays here for export.',
    }),
  },
};
