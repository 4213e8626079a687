/** Stands in for forecast services on this machine: what is asked of any host is asked here, so that no test reaches outside. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Ask, Asking, Patience } from '../../cli/weather/provider.ts';

/** Answers one request; leaving it open is a service that never answers. */
export type Answering = (reply: ServerResponse, request: IncomingMessage) => void;

export interface ForecastServer {
  readonly port: number;
  /** `host path` of every request, in order. */
  readonly asked: readonly string[];
  /** Headers of the last request. */
  readonly headers: () => IncomingMessage['headers'];
  readonly ask: Ask;
  readonly close: () => Promise<void>;
}

/** Soon at its end: the pauses are none, and a reply has a fraction of a second. */
export const hasty: Patience = { timeout: 200, pauses: [0, 0], bytes: 50_000 };

/** A service whose replies come in this order, the last one for ever. */
export const serve = async (...answers: readonly Answering[]): Promise<ForecastServer> => {
  const asked: string[] = [];
  let headers: IncomingMessage['headers'] = {};
  let count = 0;
  const server = createServer((request, reply) => {
    headers = request.headers;
    asked.push(`${request.headers['x-host']} ${request.url}`);
    answers[Math.min(count, answers.length - 1)]?.(reply, request);
    count += 1;
  });
  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', done);
  });
  const { port } = server.address() as AddressInfo;
  return {
    port,
    asked,
    headers: () => headers,
    ask: (url, init) => {
      const { host, pathname, search } = new URL(url);
      const sent = new Headers(init.headers);
      sent.set('x-host', host);
      return fetch(`http://127.0.0.1:${port}${pathname}${search}`, { ...init, headers: sent });
    },
    close: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
};

export const json =
  (value: unknown, type = 'application/json'): Answering =>
  (reply) => {
    reply.writeHead(200, { 'content-type': type });
    reply.end(JSON.stringify(value));
  };

/** Raw text under a status and content type. */
export const raw =
  (status: number, type: string, text: string, more: Readonly<Record<string, string>> = {}): Answering =>
  (reply) => {
    reply.writeHead(status, { 'content-type': type, ...more });
    reply.end(text);
  };

export const silence: Answering = () => undefined;

export const asking = ({ ask }: Pick<ForecastServer, 'ask'>, more: Partial<Asking> = {}): Asking => ({
  ask,
  patience: hasty,
  leaving: new AbortController().signal,
  days: 2,
  ...more,
});
