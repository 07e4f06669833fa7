// A push service that only takes and counts: `node push_service.mjs [CERTIFICATE.pem]`; prints its port.
// /ok answers at once, /slow/MS after so many ms. It is Node because it must be faster than what is measured.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';

const [, , certificate] = process.argv;
const answer = (request, response) => {
  request.resume();
  request.on('end', () => {
    const delay = /^\/slow\/(\d+)/.exec(request.url)?.[1];
    const done = () => response.writeHead(201, { 'Content-Length': 0 }).end();
    if (delay) setTimeout(done, Number(delay));
    else done();
  });
};
const pem = certificate && readFileSync(certificate);
const server = pem ? createSecureServer({ key: pem, cert: pem }, answer) : createServer(answer);
server.keepAliveTimeout = 60_000;
server.listen(0, '127.0.0.1', () => console.log(server.address().port));
