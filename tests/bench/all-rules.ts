/** All rules evaluated over the demo, beside bare json-rules-engine with the same conditions and facts; and a look ahead. */
import { Engine, type TopLevelCondition } from 'json-rules-engine';
import { demoLedger } from '../../cli/demo/demo.ts';
import { evaluate } from '../../engine/ask/evaluate.ts';
import { rememberWorkings, rulesOf, type World, workingsOn } from '../../engine/ask/world.ts';
import { addDays } from '../../engine/day.ts';
import { allFacts } from '../../engine/facts/index.ts';
import { rememberViews } from '../../engine/facts/views.ts';
import { openText } from '../../engine/index.ts';
import { operatorNamed } from '../../engine/operators.ts';
import { leavesOf } from '../../engine/rulebook/conditions.ts';
import type { Condition, Rule } from '../../engine/types.ts';
import { rulebook } from '../helpers/rulebook-of.ts';
import { median, printTable } from './table.ts';

const today = '2026-05-14';
const group = 'whites';
const rounds = 20;
const days = 120;
const { book } = rulebook();
const state = openText(book, 'demo', demoLedger(today)).state({ on: today, asOf: null, lines: null });
const world: World = { book, facts: allFacts, state, problems: [], see: rememberViews() };
const workings = workingsOn(world, today, null, []);
const questions = Object.keys(book.questions);
const rules = questions.flatMap((id) => rulesOf(world, id));

const bareCondition = (condition: Condition): object => {
  if ('all' in condition) return { all: condition.all.map(bareCondition) };
  if ('any' in condition) return { any: condition.any.map(bareCondition) };
  if ('not' in condition) return { not: bareCondition(condition.not) };
  const right =
    condition.figure !== null
      ? { fact: `figure:${condition.figure}` }
      : condition.other !== null
        ? { fact: condition.other }
        : (condition.value ?? true);
  return { fact: condition.fact, operator: operatorNamed(condition.operator)?.engine ?? '', value: right };
};

const bareRun = async (all: readonly Rule[]): Promise<void> => {
  const engine = new Engine([], { allowUndefinedFacts: true });
  engine.addOperator('known', (left: unknown) => left !== undefined);
  for (const rule of all) {
    const inner = bareCondition(rule.when);
    const conditions = ('fact' in rule.when ? { all: [inner] } : inner) as TopLevelCondition;
    engine.addRule({ name: rule.id, conditions, event: { type: rule.id } });
    for (const { leaf } of leavesOf(rule.when)) {
      engine.addFact(leaf.fact, workings.step(leaf.fact, group).value ?? undefined);
      if (leaf.other !== null)
        engine.addFact(leaf.other, workings.step(leaf.other, group).value ?? undefined);
      if (leaf.figure !== null)
        engine.addFact(`figure:${leaf.figure}`, workings.figure(leaf.figure, group)?.base);
    }
  }
  await engine.run();
};

const time = async (work: () => Promise<unknown>): Promise<number> => {
  const from = performance.now();
  await work();
  return performance.now() - from;
};

const bare: number[] = [];
const ours: number[] = [];
const fresh: number[] = [];
const ahead: number[] = [];
for (let round = 0; round < rounds; round += 1) {
  bare.push(await time(() => bareRun(rules)));
  ours.push(await time(() => evaluate(world, rules, workings, group)));
  const goOut = rulesOf(world, 'go-out');
  fresh.push(await time(() => evaluate(world, goOut, workingsOn(world, today, null, []), group)));
  const remembering = { ...world, memory: rememberWorkings() };
  ahead.push(
    await time(async () => {
      for (let day = 0; day < days; day += 1)
        await evaluate(remembering, goOut, workingsOn(remembering, addDays(today, day), null, []), group);
    }),
  );
}

const row = (what: string, taken: readonly number[], against: readonly number[]): string[] => [
  what,
  median(taken).toFixed(2),
  (median(taken) / median(against)).toFixed(2),
];
printTable(`${rules.length} rules of ${questions.length} questions`, [
  ['what', 'ms', 'ratio'],
  row('bare json-rules-engine', bare, bare),
  row('our evaluation', ours, bare),
  row('one evaluation of going out, facts included', fresh, fresh),
  row(`${days} days of it, what a day leaves alone kept`, ahead, fresh),
]);
