/** Rule files that nobody would write: refused with a place, or laid over whole; never an error, never half. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withOwnRules } from '../../engine/index.ts';
import { shipped } from '../helpers/flock-of.ts';
import { often, patience, tell } from './extent.ts';
import { edges, rawText, slowest } from './hostile.ts';

const files: readonly (readonly [string, readonly string[]])[] = [
  [
    'decisions/go-out/not-in-term.yaml',
    [
      'gives: no',
      'when:',
      '  all:',
      '    - fact: place',
      '      operator: is',
      '      value: brooder',
      '      because: they live in the brooder',
      'says: Not in term, the {group} have to wait.',
      'why-right: nobody is home to close the pen at dusk',
      'source: own-judgement',
      'outranks: [may-go, too-young, cold-night]',
      'cases:',
      '  - {name: in the brooder, facts: {place: brooder}, expect: held}',
      '  - {name: in the pen, facts: {place: pen}, expect: failed}',
      '  - {name: not known, facts: {}, expect: unknown}',
    ],
  ],
  [
    'figures/water/hot-day.yaml',
    [
      'description: a hot day',
      'unit: F',
      'values:',
      '  - {from: 2026-05-01, source: own-judgement, value: 75}',
    ],
  ],
  ['questions/go-out.yaml', ['phrasings: [is it tractor time]']],
];

/** A good file of which lines are left out, doubled, moved in or given another value. */
const spoilt = fc
  .record({
    which: fc.constantFrom(...files),
    at: fc.nat(14),
    how: fc.constantFrom('out', 'twice', 'in', 'value', 'tag', 'anchor', 'lines'),
    edge: edges,
  })
  .map(({ which: [file, lines], at, how, edge }) => {
    const place = at % lines.length;
    const line = lines[place] ?? '';
    const key = line.replace(/:.*/, ':');
    const changed = {
      out: [],
      twice: [line, line],
      in: [`   ${line}`],
      value: [`${key} ${edge}`],
      tag: [`${key} !!js/function ${edge}`],
      anchor: [`${key} &a [*a, *a, *b]`],
      lines: [line, ...edge.split(''), '---', line],
    }[how];
    return { file, text: [...lines.slice(0, place), ...changed, ...lines.slice(place + 1)].join('\n') };
  });
const raw = fc.record({
  file: fc.constantFrom(...files.map(([file]) => file), '../x.yaml', '__proto__.yaml'),
  text: rawText,
});

test(
  'rule files spoilt and raw',
  async () => {
    const times = often(100, 100_000);
    const took = slowest();
    let refused = 0;
    for (const file of fc.sample(
      fc.oneof({ weight: 3, arbitrary: spoilt }, { weight: 2, arbitrary: raw }),
      times,
    )) {
      const { book, problems } = await took.timeLong(() => withOwnRules(shipped, [file]));
      if (problems.length > 0) {
        refused += 1;
        expect(book).toBe(shipped);
        expect(problems.filter(({ at }) => at.line < 1 || at.column < 1)).toEqual([]);
      }
    }
    expect(refused).toBeGreaterThan(times / 2);
    expect(Object.keys(Object.prototype)).toEqual([]);
    tell({
      what: 'rule files',
      times,
      lost: 0,
      note: `${refused} refused, slowest ${took.worst().toFixed(1)} ms`,
    });
  },
  patience,
);
