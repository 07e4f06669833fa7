// What checks keep for their next run, in a folder that git ignores. A file that is missing only costs time.
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = new URL('../../../.pytest_cache/checks/', import.meta.url).pathname;

/** @param {string} name */
export const placeOf = (name) => join(folder, name);

/** Write a file as a whole, beside others that may do the same. @param {string} name @param {string} text */
export function keep(name, text) {
  mkdirSync(folder, { recursive: true });
  const begun = placeOf(`${name}.${process.pid}`);
  writeFileSync(begun, text);
  renameSync(begun, placeOf(name));
}

/** @param {...string} texts @returns {string} a name for just these texts */
export const digest = (...texts) => createHash('sha256').update(JSON.stringify(texts)).digest('hex');

/** The texts of files beside this one, and what runs them. @param {...string} names */
export const tools = (...names) => digest(process.version, ...names.map((name) => readFileSync(beside(name), 'utf8')));

/** @param {string} name */
const beside = (name) => new URL(name, import.meta.url);
