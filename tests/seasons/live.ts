/** Lives a season inside one process: the same turns as the chat takes, and the engine's own answers beside them. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { phrase } from '../../cli/say/phrase.ts';
import { plain } from '../../cli/say/plain.ts';
import type { Flock } from '../../cli/talk/flock.ts';
import { speechFor } from '../../cli/talk/flock.ts';
import { openOwn } from '../../cli/talk/open-flock.ts';
import { type Memory, nothingYet } from '../../cli/talk/reply.ts';
import { turn } from '../../cli/talk/turn.ts';
import type { Lexicon } from '../../cli/understand/lexicon.ts';
import { addDays } from '../../engine/day.ts';
import type { Answer, Rulebook, StepToDo } from '../../engine/types.ts';
import type { Season } from './five.ts';
import { tellFor } from './keeper.ts';

/** A task of the round as data and as read. */
export interface Task {
  readonly step: StepToDo;
  readonly says: string;
}

export interface Morning {
  readonly day: number;
  readonly on: string;
  readonly round: readonly Task[];
  readonly evening: readonly Task[];
  /** The answer of every question that the round gathers, asked by itself. */
  readonly singles: Readonly<Record<string, Answer>>;
  /** Lines that were told and not written, with what came back. */
  readonly refused: readonly string[];
}

const roundOf = async (flock: Flock, on: string): Promise<readonly Task[]> => {
  const speech = speechFor(flock);
  const moment = { on, asOf: null, lines: null };
  const answer = await flock
    .engine()
    .ask({ question: 'today', groups: [], moment, until: null, supposing: [] });
  return answer.parts.flatMap((part) =>
    part.steps.map((step) => ({ step, says: phrase(speech, step.says) })),
  );
};

const singlesOf = async (flock: Flock, on: string): Promise<Record<string, Answer>> => {
  const moment = { on, asOf: null, lines: null };
  const answers: Record<string, Answer> = {};
  for (const question of flock.book.questions.today?.gathers ?? []) {
    const asked = flock.book.questions[question];
    // A question of the whole flock has no place in the round on days that it does not concern.
    if (asked?.per === 'flock' && asked.concerns !== null) {
      const value = String(flock.engine().fact(asked.concerns.fact, null, moment));
      if (!asked.concerns.oneOf.includes(value)) continue;
    }
    answers[question] = await flock
      .engine()
      .ask({ question, groups: [], moment, until: null, supposing: [] });
  }
  return answers;
};

/** A season lived through: its mornings, and the flock file that it left. */
export interface Lived {
  readonly mornings: readonly Morning[];
  readonly ledger: string;
}

/** Lives all days of a season; single answers are asked on every `step`-th day, since they look ahead. */
export const liveSeason = async (
  book: Rulebook,
  lexicon: Lexicon,
  season: Season,
  step: number,
): Promise<Lived> => {
  const folder = mkdtempSync(join(tmpdir(), 'penside-season-'));
  const path = join(folder, 'flock.jsonl');
  const lived: Morning[] = [];
  try {
    for (let day = 0; day < season.days; day += 1) {
      const on = addDays(season.first, day);
      const refused: string[] = [];
      const at = (hour: string): Flock =>
        openOwn({ book, lexicon, path, today: on, asOf: null, now: `${on}T${hour}:00+00:00`, by: 'Nell' });
      const tell = async (lines: readonly string[], hour: string): Promise<void> => {
        const flock = at(hour);
        let memory: Memory = nothingYet;
        for (const line of lines) {
          const reply = await turn(flock, line, memory, { on, group: null, write: true });
          memory = reply.memory;
          if (reply.record?.recorded == null)
            refused.push(`${on} ${line}: ${plain(reply.tokens, 200).join(' ')}`);
        }
      };
      const doing = (tasks: readonly Task[]): string[] =>
        tasks.filter((task) => !task.step.done).flatMap((task) => tellFor(task.says) ?? []);
      await tell(season.script(day), '06:30');
      const flock = at('07:00');
      const round = await roundOf(flock, on);
      const singles = day % step === 0 ? await singlesOf(flock, on) : {};
      await tell(doing(round), '08:00');
      await tell(doing(await roundOf(at('18:00'), on)), '18:00');
      lived.push({ day, on, round, evening: await roundOf(at('19:00'), on), singles, refused });
    }
    return { mornings: lived, ledger: readFileSync(path, 'utf8') };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
