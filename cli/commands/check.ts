/** All problems of the keeper's own rule files, and of the ledger, in file order. */
import { jsonLine } from '../say/json-line.ts';
import { sayProblem, sayProblemShort } from '../say/problem.ts';
import { exits } from '../talk/reply.ts';
import type { Command } from './command.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

export const check: Command = {
  name: 'check',
  says: 'list everything that is wrong with the flock file and with rules of your own',
  usage: 'penside check [options]',
  options: [
    {
      name: 'short',
      takes: null,
      says: 'one line a problem and nothing when there is none, as for a commit hook',
    },
    options.json,
    options.on,
    options.asOf,
    options.file,
  ],
  run: async (given, around) => {
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock, path, isDemo } = opened;
    const problems = [
      ...(flock.ownProblems ?? []),
      ...flock.engine().check(flock.today, { asOf: flock.asOf, lines: null }),
    ];
    const grave = problems.filter((problem) => problem.grave).length;
    const exit = grave > 0 ? exits.problems : exits.answered;
    if (given.options.json === true)
      return { out: problems.map((problem) => jsonLine(problem)), err: [], exit };
    if (given.options.short === true) return { out: problems.map(sayProblemShort), err: [], exit };
    const lines = flock.engine().standing().length;
    const place = isDemo ? 'the demo' : path;
    const summary =
      problems.length === 0
        ? `${place}: ${lines} entries, nothing wrong.`
        : `${place}: ${lines} entries, ${problems.length} ${problems.length === 1 ? 'problem' : 'problems'}, ${grave} of them in the way of answers.`;
    return { out: [...problems.flatMap((problem) => [...sayProblem(problem), '']), summary], err: [], exit };
  },
};
