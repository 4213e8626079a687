/** One reply of a service as JSON, with everything about it distrusted. */
import { setTimeout as pause } from 'node:timers/promises';
import type { Asking, Failure, Got } from './provider.ts';

/** Honest, and the same for every keeper. */
const userAgent = 'penside (terminal program for keepers of a small flock)';

/** Failures that may be gone a moment later. */
const passing: ReadonlySet<Failure> = new Set(['unreachable', 'too-slow', 'turned-down']);

const failureOf = (error: unknown, leaving: AbortSignal): Failure => {
  if (leaving.aborted) return 'left';
  return error instanceof Error && error.name === 'TimeoutError' ? 'too-slow' : 'unreachable';
};

const statusFailure = (status: number): Failure => {
  if (status >= 300 && status < 400) return 'redirected';
  return status === 404 ? 'not-covered' : 'turned-down';
};

/** The text of a body, undefined when it is more than so many bytes. */
const readAtMost = async (body: Response['body'], most: number): Promise<string | undefined> => {
  const decoder = new TextDecoder();
  let [text, size] = ['', 0];
  // Leaving the loop early closes the connection.
  for await (const chunk of body ?? []) {
    size += chunk.byteLength;
    if (size > most) return undefined;
    text += decoder.decode(chunk, { stream: true });
  }
  return text + decoder.decode();
};

const parse = (text: string): Got<unknown> => {
  try {
    return { got: JSON.parse(text) };
  } catch {
    return { failed: 'not-a-forecast' };
  }
};

const getOnce = async (url: string, { ask, patience, leaving }: Asking): Promise<Got<unknown>> => {
  try {
    const reply = await ask(url, {
      headers: { 'User-Agent': userAgent, Accept: 'application/geo+json, application/json' },
      // A forecast stands where its documents say; whoever sends us elsewhere is a network that wants something.
      redirect: 'manual',
      signal: AbortSignal.any([AbortSignal.timeout(patience.timeout), leaving]),
    });
    const isJson = /^application\/(\w+\+)?json\b/i.test(reply.headers.get('content-type') ?? '');
    if (!reply.ok || !isJson) {
      await reply.body?.cancel();
      return { failed: reply.ok ? 'no-data' : statusFailure(reply.status) };
    }
    const text = await readAtMost(reply.body, patience.bytes);
    return text === undefined ? { failed: 'too-large' } : parse(text);
  } catch (error) {
    return { failed: failureOf(error, leaving) };
  }
};

/** Gets JSON, trying again after each pause while the failure is one that may pass. Never throws. */
export const getJson = async (url: string, asking: Asking): Promise<Got<unknown>> => {
  const { patience, leaving } = asking;
  for (const ms of patience.pauses) {
    const reply = await getOnce(url, asking);
    if ('got' in reply || !passing.has(reply.failed)) return reply;
    try {
      await pause(ms, undefined, { signal: leaving });
    } catch {
      return { failed: 'left' };
    }
  }
  return getOnce(url, asking);
};
