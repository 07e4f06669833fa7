// Lets a test in Node import modules of the phone that name what the page's import map leads to.
import { register } from 'node:module';

/** Files below pwa by the names of libraries, as tests/support/node_tests.py gives them. */
const libraries = Object.entries(JSON.parse(process.env.LIBRARIES));
const led = Object.fromEntries(
  libraries.map(([name, file]) => [name, new URL(`../../../pwa/${file}`, import.meta.url)]),
);
const hook = `
  const led = ${JSON.stringify(led)};
  export const resolve = (name, context, next) => next(led[name] ?? name, context);
`;
register(`data:text/javascript,${encodeURIComponent(hook)}`);
