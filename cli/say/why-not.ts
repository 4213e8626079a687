/** Why an answer is not another one, in words: the rules that could have said so and where each stopped. */
import type { Answer, Gives, Part, PassedOver, Reason } from '../../engine/types.ts';
import { sayClaim } from './answer.ts';
import { capital } from './phrase.ts';
import { outcomeWords, sayCompared, sayReason } from './reason.ts';
import { saySource } from './source.ts';
import type { Speech } from './speech.ts';
import type { Token } from './tokens.ts';

/** What a rule's verdict is called. */
const verdictWords: Readonly<Partial<Record<Gives, string>>> = {
  yes: 'yes',
  no: 'no',
  'cannot-say': 'that nothing can be said',
  amount: 'another amount',
  list: 'another list',
};

/** The verdict that is missed when none is named: the other one of yes and no, else any other. */
export const missedBy = ({ verdict }: Part): Gives | null =>
  verdict === 'yes' ? 'no' : verdict === 'no' || verdict === 'cannot-say' ? 'yes' : null;

const sayStop = (speech: Speech, reason: Omit<Reason, 'n'>): Token => ({
  t: 'detail',
  text: `${sayCompared(speech, reason)}: ${outcomeWords[reason.outcome]}.`,
});

const sayPassed = (speech: Speech, part: Part, { rule, gives, outcome, stoppedBy }: PassedOver): Token[] => {
  const says = `Rule ${rule} would have said ${verdictWords[gives] ?? gives}`;
  const right = speech.book.rules[rule]?.whyRight;
  const about = right === undefined ? '' : ` (${right})`;
  if (outcome === 'held')
    return [{ t: 'heading', text: `${says}${about}. It holds, but ${part.rule} outranks it.` }];
  return [
    { t: 'heading', text: `${says}${about}. It stopped here:` },
    ...stoppedBy.map((reason) => sayStop(speech, reason)),
  ];
};

/** What decides instead, since a rule that fails is only half of why. */
const sayDeciding = (speech: Speech, answer: Answer, part: Part): Token[] => {
  const rule = part.rule === null ? undefined : speech.book.rules[part.rule];
  if (rule === undefined) return [];
  return [
    ...part.reasons
      .filter((reason) => reason.rule === rule.id)
      .map((each) => sayReason(speech, answer, each)),
    {
      t: 'detail',
      text: `Rule ${rule.id} decides: ${rule.whyRight.replace(/\.$/, '')} (${saySource(speech, rule.source)}).`,
    },
  ];
};

/**
 * Why each part is not what was wished.
 * @param wish the verdict asked after; null for whatever the verdict is not
 */
export const sayWhyNot = (speech: Speech, answer: Answer, wish: Gives | null): readonly Token[] =>
  answer.parts.flatMap((part): Token[] => {
    const missed = wish ?? missedBy(part);
    const claim: Token = { t: 'claim', text: capital(sayClaim(speech, part)) };
    if (missed !== null && part.verdict === missed)
      return [claim, ...part.reasons.map((each) => sayReason(speech, answer, each))];
    const could = part.passedOver.filter(({ gives }) => missed === null || gives === missed);
    const none: Token = {
      t: 'detail',
      text:
        missed === null
          ? 'No other rule of this question could have decided: the amount follows from the reasons.'
          : `No rule of this question says ${verdictWords[missed] ?? missed}.`,
    };
    return [
      claim,
      ...sayDeciding(speech, answer, part),
      ...(could.length === 0 ? [none] : could.flatMap((each) => sayPassed(speech, part, each))),
    ];
  });

/** Why a month is not among those planned: the first rule that it breaks, and where the batch goes instead; or that it breaks none. */
export const sayMonthAsked = (speech: Speech, answer: Answer): readonly Token[] => {
  const refused = answer.parts.filter(({ verdict }) => verdict === 'no');
  const none: Token = { t: 'detail', text: 'That month breaks no rule.' };
  const others = answer.parts.filter((part) => part.verdict !== 'no' && part.headline !== null);
  return [
    ...refused.flatMap((part): Token[] => [
      { t: 'claim', text: capital(sayClaim(speech, part)) },
      ...sayDeciding(speech, answer, part),
    ]),
    ...(refused.length === 0 ? [none] : []),
    ...others.map((part): Token => ({ t: 'claim', text: capital(sayClaim(speech, part)) })),
  ];
};
