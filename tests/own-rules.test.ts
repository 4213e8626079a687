/** Rules and figures in the keeper's hands, with the real program: own files beside the flock file, lists, pages and a sheet to print. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { jsonLines, penside } from './helpers/program.ts';

const today = '2026-05-14';
let home = '';
let file = '';
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'penside-'));
  file = join(home, 'flock.jsonl');
  penside(['tell', '30 reds hatched april 21 came on april 23, none dead'], { file, today });
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

const run = (...args: readonly string[]) => penside(args, { file, today });
const write = (name: string, text: string): void => {
  const path = join(home, 'flock.rules', name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
};
const notInTerm = `gives: no
when:
  all:
    - fact: place
      operator: is
      value: brooder
      because: they live in the brooder
says: Not in term, the {group} have to wait.
why-right: nobody is home to close the pen at dusk
source: our-notes
outranks: [may-go, too-young, cold-night]
cases:
  - {name: in the brooder, facts: {place: brooder}, expect: held}
  - {name: in the pen, facts: {place: pen}, expect: failed}
  - {name: not known, facts: {}, expect: unknown}
`;
const notes = 'author: Nell\ntitle: Our Notes\nyear: 2026\nwhere: the shed\nstanding: judgement\n';
const ruleFile = 'decisions/go-out/not-in-term.yaml';
const writeAll = (): void => {
  write(ruleFile, notInTerm);
  write('sources/our-notes.yaml', notes);
  write('questions/go-out.yaml', 'phrasings: [is it tractor time]\n');
  write(
    'figures/water/hot-day.yaml',
    "description: day's high at which our birds begin to pant\nunit: F\nvalues:\n  - {from: 2026-05-01, source: our-notes, value: 75}\n",
  );
};

describe('own rule files', () => {
  test('decide, are heard in their own words, and are marked wherever they count', () => {
    writeAll();
    const { out, err, exit } = run('is it tractor time for the reds');
    const lines = out.split('\n');
    expect([exit, err]).toEqual([0, '']);
    expect(lines[0]).toBe('Not in term, the reds have to wait.');
    expect(lines).toContain('Your rule: nobody is home to close the pen at dusk (go-out/not-in-term).');
  });

  test('are listed and shown whole, the published figure beside the own one', () => {
    writeAll();
    const rules = run('rules', '--own');
    expect([rules.exit, rules.err, rules.out.split('\n').slice(0, 6)]).toEqual([
      0,
      '',
      [
        'Your rule on whether a group can go out to the pen',
        '“Not in term, the [group] have to wait.”',
        'It says no when this holds:',
        '– where they live: is brooder',
        'Why: nobody is home to close the pen at dusk.',
        'Source: Nell, Our Notes, 2026; the shed; own judgement, a rule of thumb.',
      ],
    ]);
    const figures = run('figures', '--own').out;
    expect(figures).toContain('since Friday 1 May: 75 °F');
    expect(figures).toContain('It stands in place of the published figure:');
    expect(figures).toContain('80 °F');
  });

  test('with one fault are all left out, which every answer says; nothing else is in the way', () => {
    writeAll();
    write(ruleFile, notInTerm.replace('fact: place', 'fact: plaec'));
    const at = `${join(home, 'flock.rules', ruleFile)}, line 4, column 13: there is no fact called plaec.`;
    const asked = run('how many birds do I have');
    expect(asked.exit).toBe(0);
    expect(asked.out.split('\n')[0]).toBe('The reds: 30 birds alive, 23 days old, in the brooder.');
    expect(asked.out.replace(/\s+/g, ' ')).toContain(
      `Careful: Your own rules are left out, and this is by the published ones alone: ${at}`,
    );
    const own = run('rules', '--own');
    expect([own.exit, own.out]).toEqual([1, 'Your own rules are all left out until this is put right.\n']);
    expect(own.err.split('\n').slice(0, 4)).toEqual([
      at,
      '      - fact: plaec',
      '              ^^^^^',
      '  Did you mean place?',
    ]);
    const check = run('check');
    expect([check.exit, check.out.split('\n')[0]]).toEqual([1, at]);
  });

  test('without any, nothing is said of them', () => {
    expect(run('rules', '--own').out).toBe(
      `There are no rules of your own; they would be in ${join(home, 'flock.rules')}\n`,
    );
    expect(run('how many birds do I have').out).not.toContain('Your');
  });
});

describe('the book', () => {
  test('is searched by words and by numbers, and shown whole where one thing is named', () => {
    expect(run('figures', 'pasture/ground-rest').out.split('\n')[0]).toBe(
      'A figure: days before meat birds use the same ground again',
    );
    expect(run('rules', 'zeppelin')).toMatchObject({ exit: 3, out: 'No rule is about zeppelin.\n' });
    expect(run('figures', '50', 'degrees').out).toContain('pasture/lowest-night');
  });

  test('is given as one object a line for scripts', () => {
    run('tell', 'own figure pasture/ground-rest 60 days because our grass is slow');
    expect(jsonLines(run('figures', '--json', '--own'))).toEqual([
      {
        id: 'pasture/ground-rest',
        description: 'days before meat birds use the same ground again',
        unit: 'day',
        by: [],
        values: [
          {
            from: '2026-01-01',
            source: {
              id: 'common-practice',
              author: 'Keepers of small batches',
              title: 'Common practice, no source',
              year: '2026',
              where: 'no source',
              standing: 'practice',
            },
            value: 365,
            note: 'The same ground is not used for meat birds twice in a year.',
          },
        ],
        own: false,
        set: [
          { on: today, line: 2, value: 60, unit: 'day', at: null, group: null, reason: 'our grass is slow' },
        ],
      },
    ]);
  });
});

describe('a sheet', () => {
  test("is today's round, or the answer to a question, and fits a printed page", () => {
    const round = run('sheet', 'today').out.split('\n');
    expect(round.slice(0, 2)).toEqual([
      'For whoever helps with the birds, Thursday 14 May',
      'About what needs doing today.',
    ]);
    expect(Math.max(...round.map((line) => line.length))).toBeLessThanOrEqual(72);
    expect(run('sheet', 'how much water do the reds need').out.split('\n')[1]).toBe(
      'About how much water the birds need.',
    );
  });

  test('is not made of what is not understood', () => {
    const { out, exit } = run('sheet', 'what is the capital of France');
    expect([out, exit]).toEqual(['', 2]);
  });
});
