/** Killed at any point of writing: what was acknowledged stands, at most one entry more, and the next writer goes on by itself. */
import { readdirSync } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { often, patience, tell } from './extent.ts';
import { readNotes } from './notes-only.ts';
import { openDesk } from './writing.ts';

/** So many notes a writer would write were it let live: more than the longest delay leaves time for. */
const many = 1000;

test(
  'a writer killed at random points loses nothing that it acknowledged',
  async () => {
    const times = often(25, 1000);
    const delays = fc.sample(fc.integer({ min: 0, max: 40 }), times);
    let acknowledged = 0;
    let torn = 0;
    let lost = 0;
    let desk = openDesk();
    let stands = new Set<string>();
    try {
      for (const [life, delay] of delays.entries()) {
        // A file grows with every life; a new one now and then keeps the lives alike.
        if (life % 50 === 49) {
          desk.close();
          desk = openDesk();
          stands = new Set();
        }
        const writing = desk.write('Ada', life * many, many);
        await Promise.race([
          new Promise((resolve) => writing.child.stdout?.once('data', resolve)),
          writing.ended,
        ]);
        await wait(delay);
        writing.child.kill('SIGKILL');
        expect(await writing.ended).toBe(null);

        const { notes, wrong } = readNotes(desk.path);
        const wanted = [...stands, ...writing.acknowledged.map((number) => `Ada ${number}`)];
        lost += wanted.filter((note) => !notes.includes(note)).length;
        expect(notes.slice(0, wanted.length)).toEqual(wanted);
        expect(notes.length - wanted.length).toBeLessThanOrEqual(1);
        // A line that was cut off is noted and is not in the way.
        expect(wrong.filter((code) => code !== 'torn-line')).toEqual([]);
        torn += wrong.length;
        acknowledged += writing.acknowledged.length;
        stands = new Set(notes);
      }
      const last = desk.write('Ben', 0, 1);
      expect(await last.ended).toBe(0);
      expect(readNotes(desk.path).notes).toEqual([...stands, 'Ben 0']);
      // One killed while it asks for the lock leaves its own request behind, which is in nobody's way.
      const left = readdirSync(desk.folder).filter((name) => !/^flock\.jsonl\.lock\.\d+\./.test(name));
      expect(left.sort()).toEqual(['flock.jsonl', 'writer.mjs']);
    } finally {
      desk.close();
    }
    tell({
      what: 'kill -9 of a writer at random points',
      times,
      lost,
      note: `${acknowledged} entries acknowledged, ${torn} readings with a torn line`,
    });
  },
  patience,
);
