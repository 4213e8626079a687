/** What comes back of one request to a service, whatever the service or the network does. */
import { afterEach, expect, test } from 'vitest';
import { getJson } from '../../../cli/weather/get-json.ts';
import {
  type Answering,
  asking,
  type ForecastServer,
  json,
  raw,
  serve,
  silence,
} from '../../helpers/forecast-server.ts';

let server: ForecastServer | undefined;
afterEach(() => server?.close());

const url = 'https://service.example/one?two=3';

const get = async (...answers: readonly Answering[]) => {
  server = await serve(...answers);
  return { got: await getJson(url, asking(server)), tries: server.asked.length };
};

test('JSON is read, and the request tells the program and nothing of the keeper', async () => {
  expect(await get(json({ low: 3 }, 'application/geo+json; charset=utf-8'))).toEqual({
    got: { got: { low: 3 } },
    tries: 1,
  });
  expect(server?.asked).toEqual(['service.example /one?two=3']);
  expect([server?.headers()['user-agent'], server?.headers().cookie, server?.headers().referer]).toEqual([
    'penside (terminal program for keepers of a small flock)',
    undefined,
    undefined,
  ]);
});

test.each<readonly [string, Answering, string, number]>([
  ['a redirect', raw(302, 'text/html', '', { location: 'https://login.example/' }), 'redirected', 1],
  [
    'a page that a network puts before every reply',
    raw(200, 'text/html', '<html>log in</html>'),
    'no-data',
    1,
  ],
  ['a place without a forecast', raw(404, 'application/problem+json', '{}'), 'not-covered', 1],
  ['text that is cut off', raw(200, 'application/json', '{"hourly": ['), 'not-a-forecast', 1],
  ['more than a forecast can be', raw(200, 'application/json', `"${'x'.repeat(60_000)}"`), 'too-large', 1],
  ['an error that stays', raw(500, 'text/plain', 'broken'), 'turned-down', 3],
  ['too many requests', raw(429, 'application/json', '{}'), 'turned-down', 3],
  ['a service that never answers', silence, 'too-slow', 3],
])('%s', async (_, answer, failed, tries) => {
  expect(await get(answer)).toEqual({ got: { failed }, tries });
});

test('a reply that stops half way is too slow, and not waited for', async () => {
  const half: Answering = (reply) => {
    reply.writeHead(200, { 'content-type': 'application/json' });
    reply.write('{"hourly":');
  };
  expect(await get(half)).toEqual({ got: { failed: 'too-slow' }, tries: 3 });
});

test('an error that passes is not told', async () => {
  expect(await get(raw(503, 'text/plain', ''), json([1]))).toEqual({ got: { got: [1] }, tries: 2 });
});

test('where nobody listens there is no way', async () => {
  server = await serve(silence);
  const { ask } = server;
  await server.close();
  expect(await getJson(url, asking({ ask }))).toEqual({ failed: 'unreachable' });
});

test('nothing more is asked once the keeper has left', async () => {
  const leaving = new AbortController();
  server = await serve((reply) => {
    leaving.abort();
    reply.writeHead(503);
    reply.end();
  });
  expect(await getJson(url, asking(server, { leaving: leaving.signal }))).toEqual({ failed: 'left' });
  expect(server.asked.length).toBe(1);
});
