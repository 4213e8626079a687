/** A keeper who lives a season by the program: tells the weather and what happens, does what the round says, and records it. */

import type { JsonAnswer } from '../../cli/say/as-json.ts';
import { addDays } from '../../engine/day.ts';
import { jsonLines, penside, type Run } from '../helpers/program.ts';

export interface Step {
  readonly id: string;
  readonly says: string;
  readonly due: string;
  readonly done: boolean;
  readonly rule: string;
}

/** What happens on a day of the season besides the round: lines as the keeper would type them. */
export type Script = (day: number) => readonly string[];

/** Results of a single answer. */
export interface Found {
  readonly id: string;
  readonly group: string | null;
  readonly value: unknown;
}

/** The results of an answer, and the rules of its reasons. */
export const foundIn = (answer: JsonAnswer | undefined): readonly Found[] =>
  (answer?.results ?? []) as readonly Found[];
export const rulesIn = (answer: JsonAnswer | undefined): readonly string[] =>
  ((answer?.reasons ?? []) as readonly { rule: string }[]).map(({ rule }) => rule);

export interface LivedDay {
  readonly day: number;
  readonly on: string;
  /** The round before anything of it was done. */
  readonly round: readonly Step[];
  /** The round after the keeper had done and told all of it. */
  readonly after: readonly Step[];
  /** The single answers of the same morning, by question. */
  readonly answers: Readonly<Record<string, JsonAnswer>>;
  readonly told: readonly Run[];
}

/** Questions asked one by one each morning, in the words of a keeper. */
const singles: Readonly<Record<string, string>> = {
  'feed-amount': 'how much feed today',
  'go-out': 'can they go out',
  'pen-moves': 'does the pen need to move today',
  'brooder-heat': 'how warm should the brooder be',
  headcount: 'how many birds do I have',
  losses: 'are the losses normal',
  'process-when': 'when are they ready to process',
};

/** What a keeper tells after doing a task; null for tasks that leave no record. */
export const tellFor = (says: string): string | null => {
  const feed = /^Feed the (\S+) about ([\d.]+) (lb|oz|kg)/.exec(says);
  if (feed !== null) return `fed the ${feed[1]} ${feed[2]} ${feed[3]}`;
  const move = /^Move the pen of the (\S+)/.exec(says);
  if (move !== null) return `moved the pen of the ${move[1]}`;
  const out = /^Move the (\S+) out to the pen/.exec(says);
  if (out !== null) return `put the ${out[1]} out`;
  const lower = /^Lower the heat for the (\S+)/.exec(says);
  if (lower !== null) return `heat down for the ${lower[1]}`;
  return null;
};

const ask = (file: string, today: string, lines: readonly string[]): readonly JsonAnswer[] =>
  jsonLines(
    penside(['ask', '--json'], { file, today, input: `${lines.join('\n')}\n` }),
  ) as unknown as JsonAnswer[];

/** Lives one day: script first, then the single answers and the round, then doing and telling. */
export const liveDay = (file: string, first: string, day: number, script: Script): LivedDay => {
  const on = addDays(first, day);
  const tell = (lines: readonly string[], hour: string): Run[] =>
    lines.length === 0 ? [] : [penside(['tell'], { file, today: on, hour, input: `${lines.join('\n')}\n` })];
  const told = tell(script(day), '07:00');
  const asked = ask(file, on, ['what needs doing today', ...Object.values(singles)]);
  const round = asked[0]?.steps as readonly Step[];
  const answers = Object.fromEntries(
    Object.keys(singles).map((id, index) => [id, asked[index + 1] as JsonAnswer]),
  );
  const doing = (steps: readonly Step[]): string[] =>
    steps.filter((step) => !step.done).flatMap((step) => tellFor(step.says) ?? []);
  told.push(...tell(doing(round), '08:00'));
  const roundNow = (): readonly Step[] =>
    ask(file, on, ['what needs doing today'])[0]?.steps as readonly Step[];
  // What is due once more, such as a second move of the pen, only shows after the first.
  told.push(...tell(doing(roundNow()), '18:00'));
  const after = roundNow();
  return { day, on, round, after, answers, told };
};
