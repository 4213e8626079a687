import { describe, expect, test } from 'vitest';
import { allFacts } from '../../../engine/facts/index.ts';
import { openWorkings } from '../../../engine/facts/workings.ts';
import type { Loss, Sign, State, Value } from '../../../engine/types.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';
import { group, stateOf } from '../../helpers/state-of.ts';

const { book } = rulebook();

const worth = (fact: string, state: State, told = ''): Value | null =>
  openWorkings({
    state,
    book,
    facts: allFacts,
    on: state.on,
    until: null,
    supposing: told === '' ? [] : [{ what: { fact: 'signs-told' }, value: told, adds: false }],
  }).step(fact, 'whites').value;

const noted = (sign: string, on: string, more: Partial<Sign> = {}): Sign => ({
  sign,
  on,
  line: 9,
  count: null,
  group: 'whites',
  words: sign,
  ...more,
});
const withSigns = (...signs: readonly Sign[]): State => stateOf({ signs });
const loss = (on: string, count: number): Loss => ({ on, count, cause: 'unknown', line: 5 });

describe('signs of sickness', () => {
  test('on record count today and tomorrow, those of another group and of hunters do not', () => {
    const state = withSigns(
      noted('gasping', '2026-05-07'),
      noted('sneezing', '2026-05-06'),
      noted('lame', '2026-05-08', { group: 'reds' }),
      noted('digging', '2026-05-08'),
      noted('lethargic', '2026-05-08', { group: null }),
    );
    expect(worth('signs-seen', state)).toBe('gasping lethargic');
  });

  test('told of in the question count beside those on record, each once', () => {
    const state = withSigns(noted('gasping', '2026-05-08'));
    expect(worth('signs-seen', state, 'gasping diarrhea panting')).toBe('gasping diarrhea');
    expect(worth('sick-signs', state, 'gasping diarrhea panting')).toBe(2);
  });

  test.each([
    ['gasping', 1, 1],
    ['bloody-droppings', 1, 0],
    ['lame', 1, 0],
    ['sneezing', 0, 1],
    ['pasty-vent', 0, 0],
  ])('%s: %i for the vet, %i that can mean a disease to be reported', (sign, vet, reportable) => {
    expect(worth('vet-signs', stateOf(), sign)).toBe(vet);
    expect(worth('reportable-signs', stateOf(), sign)).toBe(reportable);
  });

  test('part a sick bird from the rest, but not a chick with a pasted vent from the warmth', () => {
    expect(worth('signs-to-part', stateOf(), 'pasty-vent')).toBe(0);
    expect(worth('signs-to-part', stateOf(), 'pasty-vent sneezing')).toBe(1);
  });
});

describe('sick birds', () => {
  test('are the most that were counted with one sign', () => {
    const state = withSigns(
      noted('gasping', '2026-05-08', { count: 2 }),
      noted('lethargic', '2026-05-08', { count: 3 }),
    );
    expect(worth('sick-birds', state)).toBe(3);
  });

  test('are one at least where a sign is told of without a number, and none without any', () => {
    expect(worth('sick-birds', stateOf(), 'gasping')).toBe(1);
    expect(worth('sick-birds', stateOf())).toBe(0);
  });
});

test('sickness is thought of at one sign, and at two deaths without any', () => {
  const dead = (count: number): State =>
    stateOf({ groups: [group({ losses: [loss('2026-05-08', count)] })] });
  expect(worth('looks-sick', stateOf())).toBe('no');
  expect(worth('looks-sick', stateOf(), 'sneezing')).toBe('yes');
  expect(worth('looks-sick', dead(1))).toBe('no');
  expect(worth('looks-sick', dead(2))).toBe('yes');
});

test('every sign of the health tables is one that can be told', () => {
  const tables = ['health/vet-sign', 'health/keep-apart-sign', 'health/reportable-sign'];
  const named = tables.flatMap((id) => Object.keys(book.figures[id]?.values[0]?.value ?? {}));
  const unknown = named.filter((sign) => sign !== 'other' && book.words.signs[sign]?.class !== 'illness');
  expect(unknown).toEqual([]);
});
