/** Asks every question of a program's source tree over golden flocks; runs in a Node of its own, since trees must not mix. */
import { readFileSync, writeFileSync } from 'node:fs';
import type * as engineDoor from '../../engine/index.ts';
import type * as loader from '../../engine/rulebook/load.ts';
import type { Golden } from './golden.ts';
import type { Given } from './moves.ts';

const [root = '', from = '', to = ''] = process.argv.slice(2);
const { known, openText }: typeof engineDoor = await import(`${root}/engine/index.ts`);
const { buildRulebook, readRuleFiles }: typeof loader = await import(`${root}/engine/rulebook/load.ts`);

const { book } = buildRulebook(readRuleFiles(`${root}/rules`), known);
const golden: readonly Golden[] = JSON.parse(readFileSync(from, 'utf8'));

// What only gathers other answers moves with them.
const questions = Object.values(book.questions).filter(
  ({ kind, gathers }) => kind !== 'about' && (gathers ?? []).length === 0,
);

const given: Given[] = [];
for (const { name, ledger, moments } of golden) {
  const engine = openText(book, 'flock.jsonl', ledger);
  for (const { on, lines } of moments) {
    const moment = { on, asOf: null, lines };
    for (const { id: question } of questions) {
      const { parts, results } = await engine.ask({
        question,
        groups: [],
        moment,
        until: null,
        supposing: [],
      });
      given.push({
        flock: name,
        on,
        question,
        verdicts: parts.map(({ group, verdict, rule }) => ({ group, verdict, rule })),
        amounts: results.map(({ id, fact, group, value, unit }) => ({ id, fact, group, value, unit })),
      });
    }
  }
}
writeFileSync(to, JSON.stringify(given));
