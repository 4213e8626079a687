/** The rules of the book: all by their questions, those that some words are about, or one whole. */
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { sayProblem } from '../say/problem.ts';
import { ruleAsJson, sayRuleList } from '../say/rulebook-list.ts';
import { sayRulePage } from '../say/rulebook-page.ts';
import { ownRulesFolder } from '../surroundings.ts';
import { speechFor } from '../talk/flock.ts';
import { exits } from '../talk/reply.ts';
import { listedRules } from '../talk/rule-source.ts';
import type { Command } from './command.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

export const rules: Command = {
  name: 'rules',
  says: 'list the rules, those that some words are about, or one by its name',
  usage: 'penside rules [options] [WORDS]',
  options: [options.json, options.own, options.on, options.file],
  run: async (given, around) => {
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock, path } = opened;
    const words = given.words.join(' ');
    const speech = speechFor(flock);
    const isOwn = given.options.own === true;
    const named = flock.book.rules[words];
    const found = named === undefined ? listedRules(flock, words, isOwn).rules : [named];
    const problems = isOwn ? (flock.ownProblems ?? []) : [];
    const err = problems.flatMap((problem) => [...sayProblem(problem), '']);
    const exit = problems.length > 0 ? exits.problems : found.length > 0 ? exits.answered : exits.cannotSay;
    if (given.options.json === true)
      return { out: found.map((rule) => jsonLine(ruleAsJson(speech, rule))), err, exit };
    const [only, ...others] = found;
    const out =
      only !== undefined && others.length === 0 ? sayRulePage(speech, only) : sayRuleList(speech, found);
    const nothing =
      problems.length > 0
        ? 'Your own rules are all left out until this is put right.'
        : isOwn
          ? `There are no rules of your own; they would be in ${ownRulesFolder(path)}`
          : `No rule is about ${words}.`;
    return { out: found.length === 0 ? [nothing] : plain(out, around.width), err, exit };
  },
};
