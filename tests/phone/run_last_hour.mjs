// Hours as the server tells them: the instant at which each began, its mean, least and most °C, and its humidity.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';
import '../support/node/page.mjs';

const load = (name) => import(new URL(`../../pwa/${name}.js`, import.meta.url).href);
const { learn } = await load('words/say');
const { setSkew } = await load('signals/clock');
const { lastHour } = await load('components/sensors');
learn(readFileSync(process.env.WORDS, 'utf8'), 'en');

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const hourThatBegan = (ago_ms) => [[Date.now() - ago_ms, 24, 23, 25, 50.4]];

test('the hour that runs is told, and one of long ago is not', () => {
  setSkew(0);
  assert.equal(lastHour(hourThatBegan(0.5 * HOUR_MS)), '24\u00a0°C, 50 %');
  assert.equal(lastHour(hourThatBegan(3 * HOUR_MS)), '');
  assert.equal(lastHour([]), '');
});
test('on a phone that is a day slow the hour of yesterday is not told as now', () => {
  setSkew(DAY_MS);
  assert.equal(lastHour(hourThatBegan(0.5 * HOUR_MS)), '');
  assert.equal(lastHour(hourThatBegan(0.5 * HOUR_MS - DAY_MS)), '24\u00a0°C, 50 %');
});
