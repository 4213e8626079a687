/** The smallest rulebook in which everything has its place and nothing is wrong, for tests that break one thing. */

import type { Known } from '../../engine/rulebook/checks/index.ts';
import type { RuleFile } from '../../engine/rulebook/document.ts';
import { buildRulebook } from '../../engine/rulebook/load.ts';

const files: Readonly<Record<string, string>> = {
  'assumptions.yaml': `no-frost: no frost is on record, so none is taken
`,
  'decisions/go-out/may-go.yaml': `gives: yes
when:
  all:
    - fact: age
      operator: at-least
      figure: out/youngest
      because: they are {age} old, and the least is {out/youngest}
    - fact: night-low
      operator: at-least
      other: night-floor
      because: tonight is {night-low}, and {night-floor} is the least
says: Yes, the {group} can go out.
why-right: old enough for the night
source: own-judgement
chore: {at: morning, order: 10, says: 'Move the {group} out.', done-by: out}
cases:
  - {name: old enough, facts: {age: 20 day, night-low: 60 F, night-floor: 50 F}, expect: held}
  - {name: too young, facts: {age: 10 day}, expect: failed}
  - {name: not known, facts: {}, expect: unknown}
`,
  'decisions/go-out/too-young.yaml': `gives: no
when:
  all:
    - fact: age
      operator: less-than
      figure: out/youngest
      because: they are {age} old, and the least is {out/youngest}
says: 'Not yet: the {group} are too young.'
why-right: a younger bird cannot hold its warmth
source: own-judgement
cases:
  - {name: a day short, facts: {age: 13 day}, expect: held}
  - {name: old enough, facts: {age: 14 day}, expect: failed}
  - {name: not known, facts: {}, expect: unknown}
`,
  'facts/birds.yaml': `age: {name: how old they are, how: days from the hatch to this day}
night-floor: {name: the coldest night they can stand, how: '{out/lowest-night} at {age}'}
night-low: {name: the coldest night, how: as told, ask: How cold will it be?, tell: low of 48 tonight}
place: {name: where they live, how: where they were last put}
`,
  'figures/out/lowest-night.yaml': `description: lowest night that they stand
unit: F
by:
  - {fact: age, unit: day, between: step}
values:
  - from: 2026-01-01
    source: own-judgement
    table: {14: 65, 21: 50}
`,
  'figures/out/youngest.yaml': `description: age below which none goes out
unit: day
values:
  - from: 2026-01-01
    source: own-judgement
    value: 14
`,
  'questions/go-out.yaml': `offer: whether a group can go out
example: can the reds go out
kind: yes-no
per: group
concerns: {fact: place, one-of: [brooder]}
turns: true
results:
  - {id: age, fact: age}
  - {id: first-day, fact: when}
phrasings: [can the reds go out]
`,
  'records/out.yaml': `offer: that birds went out
example: the reds went out
says: '{group} went out on {on}[ to {place}].'
asks: {group: Which birds?}
phrasings: [the reds went out]
`,
  'sources/own-judgement.yaml': `author: the makers
title: Own judgement
year: 2026
where: here
standing: judgement
`,
  'units.yaml': `shown:
  temperature: {us: F, metric: C}
units:
  C: {dimension: temperature, factor: 1, says: [°C, °C], words: [c], decimals: 0}
  F: {dimension: temperature, factor: 0.5555555555555556, offset: -32, says: [°F, °F], words: [f], decimals: 0}
  day: {dimension: time, factor: 1, says: [day, days], words: [days], decimals: 0}
`,
  'words.yaml': `ideas: {outside: [go out, outside]}
causes: {hawk: {class: hunter, words: [hawk]}}
signs: {lame: {class: illness, words: [lame]}}
kinds: {fast: [white]}
settings:
  pen: {name: the pen, dimension: size, words: [pen], example: the pen is 10 by 12 ft}
hazards:
  raptor: A hawk is left alone.
`,
};

/** Facts that this rulebook is about. */
export const smallKnown: Known = {
  facts: [
    { id: 'age', unit: 'day', figures: [] },
    { id: 'night-floor', unit: 'C', figures: ['out/lowest-night'] },
    { id: 'night-low', unit: 'C', figures: [] },
    { id: 'place', unit: null, figures: [] },
  ],
  figures: [],
};

/** Its files with these put over them: another text for a path replaces that file, a new path adds one, null takes it out. */
export const smallFiles = (over: Readonly<Record<string, string | null>> = {}): RuleFile[] =>
  Object.entries({ ...files, ...over })
    .flatMap(([file, text]) => (text === null ? [] : [{ file, text }]))
    .sort((a, b) => (a.file < b.file ? -1 : 1));

/** It, built with these files put over it. */
export const smallRulebook = (over: Readonly<Record<string, string | null>> = {}) =>
  buildRulebook(smallFiles(over), smallKnown);

/** The text of one of its files with one piece replaced, which must stand in it exactly once. */
export const changed = (file: string, piece: string, by: string): Readonly<Record<string, string>> => {
  const text = files[file] ?? '';
  if (text.split(piece).length !== 2) throw new Error(`${piece} does not stand once in ${file}`);
  return { [file]: text.replace(piece, () => by) };
};
