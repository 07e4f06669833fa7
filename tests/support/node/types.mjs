// Checks the types of the phone's modules, templates included: node tests/support/node/types.mjs [FOLDER]
//
// What stands in html`…` is text and values to TypeScript, and a component's misspelt, missing or wrong prop passes. So
// it reads a copy in which components are called. Nothing is said of the attributes of elements.
// What TypeScript knows of modules that are as they were, by their content, it keeps for the next time (tsbuildinfo).
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { DECLARED, withCalls } from './calls.mjs';
import { keep, placeOf } from './kept.mjs';

const compiler = new URL('node_modules/.bin/tsc', import.meta.url).pathname;
const ours = new URL('../../../pwa', import.meta.url).pathname;
const folder = resolve(process.argv[2] ?? ours);
const copy = mkdtempSync(join(tmpdir(), 'phone-types-'));
const [known, kept] = [join(copy, 'known.tsbuildinfo'), placeOf('types.tsbuildinfo')];
try {
  cpSync(folder, copy, { recursive: true });
  for (const name of readdirSync(copy, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.js') || name.startsWith('vendor')) continue;
    const source = readFileSync(join(copy, name), 'utf8');
    if (source.includes('html`')) writeFileSync(join(copy, name), withCalls(source));
  }
  writeFileSync(join(copy, 'calls.d.ts'), DECLARED);
  if (folder === ours && existsSync(kept)) cpSync(kept, known);
  const remembering = folder === ours ? ['--incremental', '--tsBuildInfoFile', known] : [];
  const run = spawnSync(compiler, ['-p', 'jsconfig.json', '--pretty', 'false', ...remembering], {
    cwd: copy,
    encoding: 'utf8',
  });
  if (existsSync(known)) keep('types.tsbuildinfo', readFileSync(known, 'utf8'));
  // a line of the copy is a line of the module, a column is not
  process.stdout.write(run.stdout.replace(/^(\S+)\((\d+),\d+\): /gm, 'pwa/$1:$2: '));
  process.exitCode = run.status ?? 1;
} finally {
  rmSync(copy, { recursive: true });
}
