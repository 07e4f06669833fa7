// Node's web-push doing the same work: `node web_push_rate.mjs FOLDER URL P256DH AUTH COUNT AT_ONCE`; prints seconds.
// FOLDER holds node_modules/web-push. NODE_EXTRA_CA_CERTS names the certificate of the push service.
import { Agent } from 'node:https';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const [, , folder, endpoint, p256dh, auth, count, atOnce] = process.argv;
const webPush = createRequire(join(folder, 'package.json'))('web-push');
const { publicKey, privateKey } = webPush.generateVAPIDKeys();
webPush.setVapidDetails('mailto:keeper@example.org', publicKey, privateKey);
const agent = new Agent({ keepAlive: true, maxSockets: Number(atOnce) });
const body = 'x'.repeat(400);
let left = Number(count);
const lane = async () => {
  while (left-- > 0) {
    await webPush.sendNotification({ endpoint, keys: { p256dh, auth } }, body, { agent, TTL: 3600, urgency: 'high', topic: 'a-round' });
  }
};
await webPush.sendNotification({ endpoint, keys: { p256dh, auth } }, body, { agent });
const begun = performance.now();
await Promise.all(Array.from({ length: Number(atOnce) }, lane));
console.log((performance.now() - begun) / 1000);
process.exit(0);
