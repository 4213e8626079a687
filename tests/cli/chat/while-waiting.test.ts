/** What takes long is said to be going on, and what does not is not. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { slow, whileWaiting } from '../../../cli/chat/while-waiting.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Work that takes so many milliseconds, and what is told of it meanwhile. */
const watch = async (takes: number, work: () => Promise<string> = async () => 'done'): Promise<unknown[]> => {
  const seen: unknown[] = [];
  const waiting = whileWaiting(
    () => {
      seen.push('told');
      return () => {
        seen.push('taken away');
      };
    },
    async () => {
      await new Promise((resolve) => setTimeout(resolve, takes));
      return work();
    },
  ).then(
    (outcome) => seen.push(outcome),
    (error: Error) => seen.push(error.message),
  );
  await vi.runAllTimersAsync();
  await waiting;
  return seen;
};

test('work of up to a second goes by without a word', async () => {
  expect(slow).toBe(1000);
  expect(await watch(999)).toEqual(['done']);
});

test('longer work is told once, and that is taken away before its outcome is there', async () => {
  expect(await watch(5000)).toEqual(['told', 'taken away', 'done']);
});

test('work that fails takes it away too, and hands its error on', async () => {
  const fails = () => Promise.reject(new Error('a fault of ours'));
  expect(await watch(5000, fails)).toEqual(['told', 'taken away', 'a fault of ours']);
});
