/** "what would turn it" and "when": every change that turns the answer, and the day on which it turns by itself. */
import type { Answer, Part } from '../../engine/types.ts';
import { sayClaim, sayTurnsOn, sayWhen } from './answer.ts';
import { capital } from './phrase.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** Whether the answer says yes or no of anything, so that it can turn. */
export const canTurn = ({ book }: Speech, { question, parts }: Answer): boolean =>
  book.questions[question]?.turns === true &&
  parts.some(({ verdict }) => verdict === 'yes' || verdict === 'no');

const isVerdict = ({ verdict }: Part): boolean => verdict === 'yes' || verdict === 'no';

const sayEach = (
  speech: Speech,
  answer: Answer,
  saying: (part: Part) => readonly Token[],
): readonly Token[] =>
  answer.parts
    .filter(isVerdict)
    .flatMap((part) => [{ t: 'claim', text: capital(sayClaim(speech, part)) } as const, ...saying(part)]);

/** What would turn each part, the smallest change first. */
export const sayAllTurns = (speech: Speech, answer: Answer): readonly Token[] =>
  canTurn(speech, answer)
    ? sayEach(speech, answer, (part) =>
        part.turnsOn.length === 0
          ? [{ t: 'detail', text: 'No one change of what it rests on turns it, and no two that I tried.' }]
          : part.turnsOn.map((turn): Token => ({ t: 'next', text: sayTurnsOn(speech, turn) })),
      )
    : [
        { t: 'claim', text: 'The last answer is no yes or no that could turn.' },
        { t: 'next', text: 'Ask what a change makes of it, such as "what if 5 more die".' },
      ];

/** When each part turns by itself. */
export const sayAllWhens = (speech: Speech, answer: Answer): readonly Token[] =>
  sayEach(speech, answer, (part) =>
    part.when === null
      ? [{ t: 'detail', text: 'As far ahead as I look, it does not turn by itself.' }]
      : sayWhen(speech, part),
  );
