/** Whether the draft of a record has every slot of its label, and nothing that nobody said. */
import type { Draft, Reading } from '../../../cli/understand/types.ts';
import type { Rulebook } from '../../../engine/types.ts';
import {
  buyAmount,
  degreesCheck,
  distanceCheck,
  feedAmount,
  meanCount,
  priceCheck,
  weightsCheck,
} from './amounts.ts';
import { arrivedCount, causeCheck, countCheck, deadCheck, groupCheck, onCheck, signCheck } from './birds.ts';
import type { Check, Held } from './held.ts';
import { type Fault, outcomes, worstOf } from './judged.ts';
import type { Slots } from './label.ts';
import { figureCheck, noteCheck, paidCheck, settingCheck, stepCheck, whoCheck } from './named.ts';

const checks: Readonly<Record<string, readonly Check[]>> = {
  arrive: [onCheck, groupCheck, arrivedCount, deadCheck],
  loss: [onCheck, groupCheck, countCheck, causeCheck],
  feed: [onCheck, groupCheck, feedAmount],
  buy: [onCheck, buyAmount, priceCheck],
  weigh: [onCheck, groupCheck, weightsCheck, meanCount],
  move: [onCheck, groupCheck, distanceCheck],
  out: [onCheck, groupCheck],
  weather: [onCheck, degreesCheck('low'), degreesCheck('high'), degreesCheck('rain'), degreesCheck('wind')],
  sign: [onCheck, groupCheck, countCheck, signCheck],
  process: [onCheck, groupCheck, countCheck, weightsCheck],
  keep: [groupCheck, countCheck],
  share: [onCheck, whoCheck, countCheck, stepCheck, paidCheck],
  eat: [onCheck, countCheck],
  setting: [settingCheck],
  figure: [figureCheck],
  note: [noteCheck],
};

const faultsOf = (held: Held): readonly Fault[] =>
  (checks[held.draft.kind] ?? []).flatMap((check) => check(held));

/** Kinds of which a label may count together what is told in several records. */
const added = new Set(['loss', 'keep', 'process', 'eat']);

/** Several drafts of one kind as the one that a label may make of them: counts added up, a low and a high side by side. */
const together = (drafts: readonly Draft[]): readonly Draft[] => {
  const [first, second] = drafts;
  if (first === undefined || second === undefined) return [];
  if (first.kind === 'weather')
    return [{ ...first, fields: Object.assign({}, ...[...drafts].reverse().map(({ fields }) => fields)) }];
  const counts = drafts.map(({ fields }) => fields.count);
  if (!added.has(first.kind) || !counts.every((count) => typeof count === 'number')) return [];
  const count = counts.reduce<number>((sum, each) => sum + Number(each), 0);
  return [{ ...first, fields: { ...first.fields, count } }];
};

/** The faults of a reading beside the label; of several drafts of the kind, those of the one that fits best. */
export const judgeRecord = (
  book: Rulebook,
  text: string,
  topic: string,
  slots: Slots,
  reading: Reading,
): readonly Fault[] => {
  const drafts = reading.entries.filter(({ kind }) => `tell:${kind}` === topic);
  const judged = [...drafts, ...together(drafts)].map((draft) =>
    faultsOf({ book, text, slots, draft, assumed: reading.assumed }),
  );
  const score = (faults: readonly Fault[]): number => faults.length + 10 * outcomes.indexOf(worstOf(faults));
  const [best] = judged.sort((one, other) => score(one) - score(other));
  return (
    best ?? [
      {
        slot: 'record',
        outcome: 'wrong',
        wanted: topic,
        found: reading.entries.map(({ kind }) => kind).join(),
      },
    ]
  );
};
