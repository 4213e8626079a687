/** Birds that came, from words. */
import { spansOf } from '../spans.ts';
import { countBeside, readCount } from './count.ts';
import { firstGroup } from './group.ts';
import { type Build, known, lacking, says, type Told } from './told.ts';

const deadWords = ['dead', 'doa', 'died', 'dying', 'gone', 'lost'];

/** The name for a new group: the keeper's word for the birds. A name that is taken is made free when the record is written. */
const nameFor = (told: Told): string | null => {
  const span = firstGroup(told);
  if (span === null) return null;
  const words = told.line.tokens.slice(span.from, span.to).map((token) => token.word);
  // "slow reds" are reds of the slow kind.
  const word = (words.length > 1 && words[0] === span.bird ? words.slice(1) : words).join(' ');
  return word.endsWith('s') ? word : `${word}s`;
};

/** The day of the hatch where the line says it: the day next to `hatched`. */
const hatchDay = (told: Told): string | null => {
  const at = told.line.tokens.findIndex((token) => ['hatched', 'hatch'].includes(token.word));
  const days = spansOf(told.line.spans, 'day');
  const near =
    at < 0 ? undefined : (days.find((span) => span.from > at) ?? days.find((span) => span.to === at));
  return near?.past ?? null;
};

const deadIn = (told: Told): number | null => {
  const dead = countBeside(told, deadWords);
  if (dead !== null) return dead;
  return says(told, 'none dead', 'no deaths', 'all alive', 'no losses', 'no dead', 'none doa', 'all fine')
    ? 0
    : null;
};

export const buildArrive: Build = (told) => {
  const span = firstGroup(told);
  const dead = deadIn(told);
  const hatched = hatchDay(told);
  const sexes = says(told, 'cockerels', 'males', 'all male')
    ? 'cockerels'
    : says(told, 'pullets', 'females')
      ? 'pullets'
      : null;
  const hour = spansOf(told.line.spans, 'time').find(
    (time) => says(told, 'hatched') && time.from > 0 && told.line.tokens[time.from - 1]?.word === 'hatched',
  );
  const fields = {
    group: nameFor(told),
    count: readCount(told),
    dead,
    bird: span?.bird ?? null,
    sexes,
    hatched,
    hour: hour?.at ?? null,
  };
  return {
    fields: known(fields),
    missing: lacking(fields, 'group', 'count', 'bird', 'hatched'),
    assumed: [],
  };
};
