/** A sceptic's walk over every question: each number shown is opened by "why", what is below it ends in records and figures, and its sums are right. */
import { expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import type { Speech } from '../../../cli/say/speech.ts';
import { addDays } from '../../../engine/day.ts';
import { stepsSaid } from '../../../engine/explain/drill.ts';
import { openText } from '../../../engine/index.ts';
import { ask, shipped } from '../../helpers/flock-of.ts';
import { endsInTheAir, lostNumbers, sumsAgain, wrongSums } from '../../helpers/walk-down.ts';

const today = '2026-05-14';
const demo = openText(shipped, 'demo', demoLedger(today));
const speech: Speech = { book: shipped, system: 'us', currency: '$', today };
const questions = Object.values(shipped.questions).filter(({ kind }) => kind !== 'about');

test.each(questions.map(({ id }) => id))(
  '%s of the demo, today, a week ago and on saturday',
  async (id) => {
    for (const on of [today, addDays(today, -7), '2026-05-16']) {
      const answer = await ask(demo, id, on, on > today ? { asked: today } : {});
      expect([on, lostNumbers(speech, answer, demo.lines)]).toEqual([on, []]);
      expect([on, endsInTheAir(answer, stepsSaid(answer))]).toEqual([on, []]);
      expect([on, wrongSums(speech, answer)]).toEqual([on, []]);
    }
  },
  60_000,
);

test('many of the workings are plain sums, and so were worked out again', async () => {
  const again = new Set<string>();
  for (const { id } of questions) {
    const answer = await ask(demo, id, today);
    for (const step of answer.workings) if (sumsAgain(speech, answer, step).length > 0) again.add(step.fact);
  }
  expect(again.size).toBeGreaterThan(40);
}, 60_000);
