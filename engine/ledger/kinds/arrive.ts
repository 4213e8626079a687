/** Birds that came: one group of one kind and hatch. */
import { findingAt } from '../finding.ts';
import { defineKind } from './kind.ts';
import { choiceOf, countOf, countOrNull, textOf, textOrNull } from './take.ts';

const SEXES = ['mixed', 'cockerels', 'pullets'] as const;

export const arrive = defineKind({
  kind: 'arrive',
  concerns: 'group',
  fields: [
    { name: 'group', type: 'group', required: true },
    { name: 'count', type: 'count', required: true, min: 1 },
    { name: 'dead', type: 'count', min: 0 },
    { name: 'bird', type: 'text', required: true },
    { name: 'sexes', type: 'choice', choices: SEXES },
    { name: 'hatched', type: 'day', required: true },
    { name: 'hour', type: 'hour' },
  ],
  example:
    '{"kind":"arrive","on":"2026-04-09","group":"whites","count":52,"dead":1,"bird":"fast","hatched":"2026-04-07","hour":"06:00"}',
  check: (entry) => {
    const count = countOf(entry, 'count');
    const dead = countOrNull(entry, 'dead') ?? 0;
    const hatched = textOf(entry, 'hatched');
    return [
      ...(dead > count ? [findingAt('out-of-range', 'dead', { found: dead, min: 0, max: count })] : []),
      ...(hatched > entry.on
        ? [findingAt('out-of-range', 'hatched', { found: hatched, max: entry.on })]
        : []),
    ];
  },
  apply: (draft, entry) => {
    const name = textOf(entry, 'group');
    // The first to have a name keeps it; the check `name-taken` reports the other.
    if (draft.groups.has(name)) return;
    draft.groups.set(name, {
      name,
      kind: textOf(entry, 'bird'),
      sexes: choiceOf(entry, 'sexes', SEXES),
      hatched: textOf(entry, 'hatched'),
      hatchHour: textOrNull(entry, 'hour'),
      arrived: entry.on,
      line: entry.line,
      boxed: countOf(entry, 'count'),
      dead: countOrNull(entry, 'dead') ?? 0,
      losses: [],
      weighings: [],
      whereabouts: [],
      processed: [],
      kept: [],
    });
  },
});
