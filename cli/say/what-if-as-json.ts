/** What suppositions make of an answer, as data for scripts. */
import type { WhatIf } from '../../engine/types.ts';
import { sayClaims } from './answer.ts';
import { comparedAsJson, jointVerdict, valued } from './as-json.ts';
import type { Speech } from './speech.ts';
import { sayWhatIf } from './what-if.ts';

/** `before` without the suppositions, every difference, and for each group the rule that now decides with what lets it. */
export const whatIfAsJson = (speech: Speech, compared: WhatIf): object => {
  const { before, after, differences, turned } = compared;
  return {
    before: {
      verdict: jointVerdict(before.parts),
      headline: sayClaims(speech, before.parts).join(' '),
      ref: before.ref,
    },
    changes: differences.map(({ what, id, fact, group, from, to, unit }) => ({
      what,
      id,
      group,
      from: valued(speech, from, unit, fact ?? '').value,
      to: valued(speech, to, unit, fact ?? '').value,
      unit: valued(speech, to ?? from, unit, fact ?? '').unit,
    })),
    because: turned.map(({ group, from, to, now, noLonger }) => ({
      group,
      from,
      to,
      now: now.map((each) => comparedAsJson(speech, after, each)),
      'no-longer': noLonger.map((each) => comparedAsJson(speech, after, each)),
    })),
    says: sayWhatIf(speech, compared).flatMap((token) => (token.t === 'detail' ? [token.text] : [])),
  };
};
