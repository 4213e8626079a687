/** Birds that came, from words. */
import { spansOf } from '../spans.ts';
import { countBeside, readCount } from './count.ts';
import { firstGroup } from './group.ts';
import { type Build, known, lacking, numbers, says, type Told } from './told.ts';

const deadWords =
  'dead doa died dying gone lost goner goners expired perished squashed flat moving kicking survive stiff crushed deid'.split(
    ' ',
  );

const tails = new Set([
  'one',
  'ones',
  'un',
  'uns',
  'chicks',
  'chick',
  'birds',
  'bird',
  'sort',
  'type',
  'lot',
]);

/** The name for a new group: the keeper's word for the birds. A name that is taken is made free when the record is written. */
const nameFor = (told: Told): string | null => {
  const span = firstGroup(told);
  if (span === null || span.bird === null) return null;
  const said = told.line.tokens.slice(span.from, span.to).map((token) => token.word);
  // "white ones" are whites
  const words = said.length > 1 && tails.has(said.at(-1) ?? '') ? said.slice(0, -1) : said;
  // "slow reds" are reds of the slow kind.
  const word = (words.length > 1 && words[0] === span.bird ? words.slice(1) : words).join(' ');
  // "slow" alone names the kind and nothing that can be counted.
  if (word === span.bird) return told.about.book.words.kinds[span.bird]?.[0] ?? word;
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

/** The number nearest in front of a word for the dead: `52 live and two dead`, `2 did not survive`. */
const deadBeside = (told: Told): number | null => {
  const { tokens } = told.line;
  const reach = 5;
  const at = tokens.findIndex(({ word }) => deadWords.includes(word));
  const near = numbers(told).filter(
    ({ from, to, value }) => Number.isInteger(value) && to <= at && at - from <= reach,
  );
  return near.at(-1)?.value ?? countBeside(told, deadWords);
};

const boxes = new Set(['box', 'boxes', 'carton', 'cartons', 'crate', 'crates', 'tray', 'trays']);
const counted = 'supplied delivered counted lifted arrived came box alive living live'.split(' ');
const ordered = 'ordered order ord supposed said sent paid billed says'.split(' ');

/** `two boxes of 25`, `two boxes, 25 in each`. */
const inBoxes = (told: Told): number | null => {
  const { tokens } = told.line;
  const all = numbers(told);
  const many = all.find(({ to }) => boxes.has(tokens[to]?.word ?? ''));
  const each = all.find(
    (span) =>
      many !== undefined &&
      span.from >= many.to &&
      (['of', 'à'].includes(tokens[span.from - 1]?.word ?? '') ||
        (tokens[span.to]?.word === 'in' && tokens[span.to + 1]?.word === 'each') ||
        tokens[span.to]?.word === 'each'),
  );
  return many === undefined || each === undefined || many.value < 2 ? null : many.value * each.value;
};

/** Birds put in for nothing, beside those that were asked for: `forty and 2 for free`. */
const extraIn = (told: Told): { readonly from: number; readonly value: number } | undefined =>
  numbers(told).find(({ to }) =>
    told.line.tokens.slice(to, to + 2).some(({ word }) => ['extra', 'extras', 'spare'].includes(word)),
  );

/** How many came: those counted rather than those ordered. */
const arrivedIn = (told: Told): number | null => {
  const boxed = inBoxes(told);
  if (boxed !== null) return boxed;
  const { tokens } = told.line;
  const dead = deadBeside(told);
  const isOrdered = ({ from, to }: { from: number; to: number }): boolean =>
    ordered.includes(tokens[to]?.word ?? '') || ordered.includes(tokens[from - 1]?.word ?? '');
  const whole = numbers(told).filter(({ value }) => Number.isInteger(value) && value > 0);
  const extra = extraIn(told);
  const came = whole.filter((span) => !isOrdered(span) && span.value !== dead && span.from !== extra?.from);
  const near = came.find(({ to }) => tokens.slice(to, to + 3).some(({ word }) => counted.includes(word)));
  if (whole.some(isOrdered) && came.length > 0) return (near ?? came[0])?.value ?? null;
  const stated = readCount(told);
  if (extra !== undefined && came[0] !== undefined && says(told, 'paid', 'and', 'plus'))
    return came[0].value + extra.value;
  return stated === dead && came[0] !== undefined ? came[0].value : stated;
};

const deadIn = (told: Told): number | null => {
  if (
    says(
      told,
      'none dead',
      'no deaths',
      'all alive',
      'no losses',
      'no dead',
      'none doa',
      'all fine',
      'not one dead',
      'all lively',
    )
  )
    return 0;
  const dead = deadBeside(told);
  if (dead !== null) return dead;
  return says(told, 'all living', 'all kicking', 'all up', 'all well') ? 0 : null;
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
    count: arrivedIn(told),
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
