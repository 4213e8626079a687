/** Every turn of advice between two days, each with what made it so. */
import { addDays, type Day, isDay } from '../../engine/day.ts';
import type { Difference } from '../../engine/types.ts';
import { sayChanged } from '../say/changed.ts';
import { changedAsJson } from '../say/changed-as-json.ts';
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { sayDay } from '../say/quantity.ts';
import type { Token } from '../say/tokens.ts';
import { roundQuestions } from '../talk/changed.ts';
import { speechFor } from '../talk/flock.ts';
import { exits } from '../talk/reply.ts';
import { type Command, type Given, type Outcome, textOf, wrongUse } from './command.ts';
import { demoNote, openFlock } from './open.ts';
import * as options from './options.ts';

/** How many days are gone through when no first day is said. */
const usualDays = 14;

interface Span {
  readonly from: Day;
  readonly to: Day;
}

const spanOf = (given: Given, today: Day): Span | Outcome => {
  const to = textOf(given, 'to') ?? today;
  const from = textOf(given, 'from') ?? (isDay(to) ? addDays(to, 1 - usualDays) : to);
  for (const [name, day] of [
    ['--from', from],
    ['--to', to],
  ] as const) {
    if (!isDay(day)) return wrongUse(`${name} wants a day as 2026-05-14, not ${day}`);
  }
  return from <= to ? { from, to } : wrongUse(`--from ${from} is after --to ${to}`);
};

export const audit: Command = {
  name: 'audit',
  says: 'list every turn of advice between two days, with its causes',
  usage: 'penside audit [options] [QUESTION]',
  options: [
    options.json,
    { name: 'from', takes: 'DATE', says: 'the first day, else two weeks back' },
    { name: 'to', takes: 'DATE', says: 'the last day, else today' },
    options.on,
    options.file,
  ],
  run: async (given, around) => {
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock, isDemo } = opened;
    const span = spanOf(given, flock.today);
    if ('exit' in span) return span;
    const asked = Object.values(flock.book.questions).filter(({ kind }) => kind !== 'about');
    const unknown = given.words.find((word) => !asked.some(({ id }) => id === word));
    if (unknown !== undefined)
      return wrongUse(`there is no question ${unknown}; there are ${asked.map(({ id }) => id).join(', ')}`);
    const questions = given.words.length > 0 ? given.words : roundQuestions(flock.book);
    // An amount is asked about for its changes; beside a verdict it follows from the day.
    const amounts = asked.some(({ id, kind }) => kind === 'amount' && given.words.includes(id));
    const counts = ({ what }: Difference): boolean =>
      what === 'verdict' || what === 'task' || (amounts && what === 'result');

    const turnings = await flock.engine().audit(null).span(questions, span.from, span.to, counts);
    const { lines } = flock.engine();
    const speech = speechFor(flock);
    const err = isDemo ? [demoNote] : [];
    if (given.options.json === true)
      return {
        out: turnings.map(({ comparison }) => jsonLine(changedAsJson(speech, lines, comparison))),
        err,
        exit: exits.answered,
      };
    const tokens = turnings.flatMap(({ on, comparison }): Token[] => [
      {
        t: 'heading',
        text: `${sayDay(on, flock.today)}: ${flock.book.questions[comparison.question]?.offer ?? comparison.question}`,
      },
      ...sayChanged(speech, comparison, { lines, wasSaid: false }),
    ]);
    const days = `from ${sayDay(span.from, flock.today)} to ${sayDay(span.to, flock.today)}`;
    const claim: Token = {
      t: 'claim',
      text:
        turnings.length === 0
          ? `No advice turned ${days}.`
          : `${turnings.length} ${turnings.length === 1 ? 'turn' : 'turns'} of advice ${days}.`,
    };
    return { out: plain([claim, ...tokens], around.width), err, exit: exits.answered };
  },
};
