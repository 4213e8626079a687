/** Five seasons lived by the daily round: it never contradicts the single answers, leaves nothing out, and asks nothing impossible. */
import { beforeAll, describe, expect, test } from 'vitest';
import { addDays } from '../../engine/day.ts';
import { stepsSaid } from '../../engine/explain/drill.ts';
import { openText } from '../../engine/index.ts';
import { lexiconFor } from '../helpers/learned.ts';
import { rulebook } from '../helpers/rulebook-of.ts';
import { endsInTheAir, lostNumbers, wrongSums } from '../helpers/walk-down.ts';
import { seasons } from './five.ts';
import { flipsIn } from './flips.ts';
import { liveSeason, type Morning, type Task } from './live.ts';

const { book } = rulebook();
const lexicon = lexiconFor(book);

const keyOf = ({ step, says }: { readonly step: Task['step']; readonly says: unknown }): string =>
  JSON.stringify([step.rule, step.group, step.done, says]);

describe.each(seasons.map((season) => [season.name, season] as const))('%s', (_, season) => {
  let lived: readonly Morning[] = [];
  let ledger = '';
  beforeAll(async () => {
    ({ mornings: lived, ledger } = await liveSeason(book, lexicon, season, 5));
  }, 300_000);

  test('everything that was told was written', () => {
    expect(lived.flatMap((morning) => morning.refused)).toEqual([]);
  });

  test('every number shown is opened by "why", down to records and figures, and the sums are right', async () => {
    const flock = openText(book, 'flock.jsonl', ledger);
    for (const share of [0.2, 0.6, 1]) {
      const on = addDays(season.first, Math.round((season.days - 1) * share));
      const moment = { on, asOf: on, lines: null };
      const speech = { book, system: 'us', currency: '$', today: on } as const;
      for (const { id } of Object.values(book.questions).filter(({ kind }) => kind !== 'about')) {
        const answer = await flock.ask({ question: id, groups: [], moment, until: null, supposing: [] });
        expect([on, id, lostNumbers(speech, answer, flock.lines)]).toEqual([on, id, []]);
        expect([on, id, endsInTheAir(answer, stepsSaid(answer))]).toEqual([on, id, []]);
        expect([on, id, wrongSums(speech, answer)]).toEqual([on, id, []]);
      }
    }
  }, 300_000);

  test('the round is made of the tasks of the single answers, and leaves out only what gives way', () => {
    for (const { on, round, singles } of lived.filter((morning) => Object.keys(morning.singles).length > 0)) {
      const single = Object.values(singles).flatMap((answer) => answer.parts.flatMap((part) => part.steps));
      const inRound = round.map(({ step }) => keyOf({ step, says: step.says }));
      const inSingles = single.map((step) => keyOf({ step, says: step.says }));
      const added = inRound.filter((key) => !inSingles.includes(key));
      const dropped = single.filter((_, index) => !inRound.includes(inSingles[index] ?? ''));
      const withoutCause = dropped.filter((step) => {
        const ways = book.rules[step.rule]?.chore?.givesWayTo ?? [];
        return !single.some((other) => other.group === step.group && ways.includes(other.rule));
      });
      expect([on, added, withoutCause]).toEqual([on, [], []]);
    }
  });

  test('the same fact has the same value in every answer of a morning', () => {
    for (const { on, singles } of lived) {
      const values = new Map<string, unknown>();
      const clashes: unknown[] = [];
      for (const { workings } of Object.values(singles)) {
        for (const { fact, group, value } of workings) {
          const key = `${fact} ${group}`;
          // Facts of a span differ where the questions' spans do.
          if (/over-span|^feed-per-bird$|^feed-bags$|span/.test(fact)) continue;
          if (values.has(key) && values.get(key) !== value) clashes.push([key, values.get(key), value]);
          values.set(key, value);
        }
      }
      expect([on, clashes]).toEqual([on, []]);
    }
  });

  test('birds that are there are fed and watered every day, and nobody else', () => {
    for (const { on, round, singles } of lived) {
      if (singles.headcount === undefined) continue;
      const alive = singles.headcount.results
        .filter((result) => result.id === 'alive' && result.group !== null && Number(result.value) > 0)
        .map((result) => result.group);
      const fed = round
        .filter(({ step }) => step.rule.startsWith('feed-amount/'))
        .map(({ step }) => step.group);
      const watered = round
        .filter(({ step }) => step.rule === 'water-amount/morning-water')
        .map(({ step }) => step.group);
      expect([on, [...new Set(fed)].sort(), [...new Set(watered)].sort()]).toEqual([
        on,
        [...alive].sort(),
        [...alive].sort(),
      ]);
    }
  });

  test('what was done is ticked off by the evening, and no task speaks of what is not known', () => {
    for (const { on, evening, round } of lived) {
      const open = evening.filter(({ step }) => !step.done && /^(feed-amount|pen-moves)\//.test(step.rule));
      const vague = round.filter(({ says }) => /not known|[{}]|NaN|undefined|−\d/.test(says));
      expect([on, open, vague]).toEqual([on, [], []]);
    }
  });

  test('every turn of a yes or a no from one morning to the next has a cause, and undoing that cause alone undoes it', async () => {
    const flips = await flipsIn(openText(book, 'flock.jsonl', ledger), season.first, season.days);
    expect(flips.length).toBeGreaterThan(2);
    expect(flips.filter(({ isUndone }) => !isUndone)).toEqual([]);
  }, 120_000);

  test('they go out once, at an age and on a night that the rules allow, and are moved from then on', () => {
    const outings = lived.flatMap(({ day, round }) =>
      round.filter(({ step }) => step.rule === 'go-out/may-go').map(({ step }) => [step.group, day]),
    );
    expect(outings).toMatchSnapshot();
    for (const [group, day] of outings) {
      const after = lived.filter((morning) => morning.day > Number(day));
      const unmoved = after.filter(
        ({ round }) =>
          round.some(({ step }) => step.group === group && step.rule.startsWith('feed-amount/')) &&
          !round.some(({ step }) => step.group === group && step.rule.startsWith('pen-moves/')),
      );
      expect(unmoved.map(({ on }) => on)).toEqual([]);
    }
  });
});
