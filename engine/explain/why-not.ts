/** Why an answer is not another one: the rules that could have said so, and where each of them stopped. Reads recorded results only. */
import type { RuleOutcome } from '../reason/outcomes.ts';
import type { PassedOver } from '../types.ts';
import { isVerdict, reasonOf, type Told } from './why.ts';

/** Whether a rule would have given something else; two amounts are never taken for the same. */
const isOther = ({ rule }: RuleOutcome, winner: RuleOutcome | null): boolean =>
  winner === null || rule.gives !== winner.rule.gives || rule.gives === 'amount';

/** The rules that could have decided otherwise, highest-ranking first, each with the conditions that kept it from it. */
export const passedOver = (told: Told): readonly PassedOver[] => {
  const { winner } = told.choice;
  return told.outcomes
    .filter((each) => each !== winner && isVerdict(each) && isOther(each, winner))
    .map((each) => ({
      rule: each.rule.id,
      gives: each.rule.gives,
      outcome: each.outcome,
      stoppedBy: each.outcome === 'held' ? [] : each.deciding.map((leaf) => reasonOf(told, each, leaf)),
    }));
};
