// Node's web-push doing the same work: `node web_push_rate.mjs FOLDER TARGETS.json`. For each line `COUNT AT_ONCE` on
// stdin it sends so many messages, to all targets by turns, and prints the seconds; so it stays warm between turns.
// FOLDER holds node_modules/web-push. NODE_EXTRA_CA_CERTS names the certificate of the push services.
import { readFileSync } from 'node:fs';
import { Agent } from 'node:https';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const [, , folder, file] = process.argv;
const webPush = createRequire(join(folder, 'package.json'))('web-push');
const targets = JSON.parse(readFileSync(file, 'utf8'));
const { publicKey, privateKey } = webPush.generateVAPIDKeys();
webPush.setVapidDetails('mailto:keeper@example.org', publicKey, privateKey);
const agent = new Agent({ keepAlive: true, maxSockets: 8 });
const options = { agent, TTL: 3600, urgency: 'high', topic: 'a-round' };
let next = 0;

const send = (body) => webPush.sendNotification(targets[next++ % targets.length], body, options);

for await (const line of createInterface({ input: process.stdin })) {
  const [count, atOnce, bytes] = line.split(' ').map(Number);
  const body = 'x'.repeat(bytes);
  let left = count;
  const lane = async () => {
    while (left-- > 0) await send(body);
  };
  const begun = performance.now();
  await Promise.all(Array.from({ length: atOnce }, lane));
  console.log((performance.now() - begun) / 1000);
}
