/** What has changed as data for scripts: every difference with its causes, and what was tried. */
import type { Comparison, Explained, Value } from '../../engine/types.ts';
import { valued } from './as-json.ts';
import { sayCause } from './cause.ts';
import type { Speech } from './speech.ts';

const differenceAsJson = (speech: Speech, lines: readonly string[], each: Explained): object => {
  const { what, id, fact, group, from, to, unit, size, causes, effects } = each;
  const value = (of: Value | null): Value | null => valued(speech, of, unit, fact ?? '').value;
  return {
    what,
    id,
    group,
    from: value(from),
    to: value(to),
    unit: valued(speech, to ?? from, unit, fact ?? '').unit,
    days: unit === 'date' ? size : null,
    causes: causes.map((cause) => ({ ...cause, says: sayCause(speech, lines, cause) })),
    tried: effects.map(({ cause, without, isUndone }) => ({
      ...cause,
      without: value(without),
      undoes: isUndone,
    })),
  };
};

/** One comparison under fixed keys; `doubt` says why some of it could not be replayed, else it is null. */
export const changedAsJson = (speech: Speech, lines: readonly string[], comparison: Comparison): object => ({
  question: comparison.question,
  since: comparison.earlier.on,
  'since-line': comparison.earlier.lines,
  on: comparison.later.on,
  differences: comparison.differences.map((each) => differenceAsJson(speech, lines, each)),
  doubt: comparison.doubt,
});
