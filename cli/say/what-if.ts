/** What suppositions make of an answer, in words: how it is without them, and what makes the difference. */
import type { Difference, Reason, Turned, WhatIf } from '../../engine/types.ts';
import { claimingIn, sayClaims } from './answer.ts';
import { listed } from './listed.ts';
import { nameOf } from './names.ts';
import { phrase } from './phrase.ts';
import { sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

type Compared = Omit<Reason, 'n'>;

const sayCompared = (speech: Speech, reasons: readonly Compared[]): string =>
  listed(
    reasons.map((each) =>
      each.outcome === 'unknown' ? `${nameOf(speech, each.fact.id)} is not known` : phrase(speech, each.says),
    ),
  );

/** Why another rule decides: what lets it, or else what stops the one before. */
const sayTurned = (
  speech: Speech,
  isOff: (rule: string) => boolean,
  { from, to, now, noLonger }: Turned,
): string => {
  const decides = to === null ? 'no rule decides any more' : `rule ${to} decides`;
  const instead = from === null ? '' : ` instead of ${from}`;
  if (from !== null && isOff(from))
    return `What makes the difference: ${from} is switched off, and ${decides}.`;
  const why = now.length > 0 ? `: ${sayCompared(speech, now)}` : '';
  const stopped =
    now.length === 0 && noLonger.length > 0
      ? `, which needs what no longer holds: ${sayCompared(speech, noLonger)}`
      : '';
  return `What makes the difference: ${decides}${instead}${why || stopped}.`;
};

const sayResult = (speech: Speech, { fact, group, from, to, unit }: Difference): string => {
  const name = fact === null ? '' : nameOf(speech, fact);
  const whose = group === null ? '' : ` (${group})`;
  const value = (of: Difference['from']): string =>
    of === null ? 'not known' : sayValue(speech, { value: of, unit }, fact ?? '');
  return `${name}${whose} ${value(from)} → ${value(to)}`;
};

/** More results than this are not read any more; `--json` has them all. */
const mostResults = 4;

/** The lines that go with an answer under suppositions. */
export const sayWhatIf = (
  speech: Speech,
  { before, after, differences, turned }: WhatIf,
): readonly Token[] => {
  if (differences.length === 0) return [{ t: 'detail', text: 'As things are, the answer is the same.' }];
  const off = new Set(after.request.supposing.flatMap(({ what }) => ('rule' in what ? [what.rule] : [])));
  const claims = sayClaims(speech, claimingIn(before));
  const results = differences.filter(({ what, fact }) => what === 'result' && fact !== null);
  return [
    ...(claims.length === 0 ? [] : [{ t: 'detail', text: `As things are: ${claims.join(' ')}` } as const]),
    ...turned.map((each): Token => ({ t: 'detail', text: sayTurned(speech, (rule) => off.has(rule), each) })),
    ...(results.length === 0
      ? []
      : [
          {
            t: 'detail',
            text: `It changes: ${listed(results.slice(0, mostResults).map((each) => sayResult(speech, each)))}.`,
          } as const,
        ]),
  ];
};
