// htm bound to Preact's h: markup as template strings, no build step.
import htm from 'htm';
import { h } from 'preact';

export const html = htm.bind(h);
