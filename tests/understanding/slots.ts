/** How many labelled records and suppositions are read with every slot right: counts by kind, with the most frequent faults. */
import { figureTold } from '../../cli/talk/figure-told.ts';
import type { Lexicon } from '../../cli/understand/lexicon.ts';
import type { About, Heard } from '../../cli/understand/types.ts';
import { understand } from '../../cli/understand/understand.ts';
import { flockToldOf } from './slots/flock-told-of.ts';
import { type Fault, type SlotOutcome, worstOf } from './slots/judged.ts';
import type { Slots } from './slots/label.ts';
import { judgeRecord } from './slots/records.ts';
import { canJudge, judgeSupposition } from './slots/suppositions.ts';

/** A labelled line with its slots, as the files have it. */
export interface Slotted {
  readonly text: string;
  readonly topic: string;
  readonly after?: string;
  readonly whatIf?: boolean;
  readonly slots?: Slots;
}

export interface ScoredSlots {
  /** The kind of record, or what is supposed to change. */
  readonly kind: string;
  readonly isSupposing: boolean;
  readonly outcome: SlotOutcome;
  readonly faults: readonly Fault[];
  /** Whether it would be written as it stands: heard as sure, with nothing missing. */
  readonly isWritten: boolean;
}

const isWhole = ({ sure, readings }: Heard): boolean =>
  sure && (readings[0]?.entries ?? []).every(({ missing }) => missing.length === 0);

/** Scores the lines that tell a record or suppose a value, and are heard as what they are about, if only among the choices. */
export const scoreSlots = (
  lines: readonly Slotted[],
  about: About,
  lexicon: Lexicon,
): readonly ScoredSlots[] => {
  const flock = flockToldOf(about.book, lexicon);
  return lines.flatMap(({ text, topic, after, whatIf = false, slots = {} }): ScoredSlots[] => {
    const isRecord = topic.startsWith('tell:') && !whatIf;
    if (!isRecord && !(whatIf && canJudge(slots))) return [];
    const before = after === undefined ? null : understand(after, about, lexicon);
    const heard = understand(text, { ...about, before }, lexicon);
    const reading = heard.readings.find((each) => each.topic === topic);
    if (reading === undefined) return [];
    const faults = isRecord
      ? judgeRecord(about.book, text, topic, slots, {
          ...reading,
          entries: reading.entries.map((draft) => figureTold(flock, draft, text, reading)),
        })
      : judgeSupposition(flock, text, slots, reading);
    const kind = isRecord ? topic : String(slots.changed);
    const isWritten = isRecord && isWhole(heard) && heard.readings[0] === reading;
    return [{ kind, isSupposing: !isRecord, outcome: worstOf(faults), faults, isWritten }];
  });
};

export type SlotCounts = Readonly<Record<SlotOutcome, number>> & { readonly heard: number };

export const countSlots = (scored: readonly ScoredSlots[]): SlotCounts => {
  const counts = { heard: scored.length, right: 0, asked: 0, lost: 0, wrong: 0 };
  for (const { outcome } of scored) counts[outcome] += 1;
  return counts;
};

const line = (name: string, { heard, right, asked, lost, wrong }: SlotCounts): string =>
  `${name.padEnd(22)} ${String(heard).padStart(5)} heard: right ${heard === 0 ? '-' : ((100 * right) / heard).toFixed(1)} %, asked for ${asked}, left out ${lost}, wrong ${wrong}`;

const mostShown = 12;

/** The table by kind, and the faults that are most frequent; no line is quoted. */
export const tableOfSlots = (scored: readonly ScoredSlots[]): readonly string[] => {
  const kinds = [...new Set(scored.map(({ kind }) => kind))].sort();
  const faults = new Map<string, number>();
  for (const { kind, faults: own } of scored)
    for (const { slot, outcome } of own) {
      const name = `${kind} ${slot} ${outcome}`;
      faults.set(name, (faults.get(name) ?? 0) + 1);
    }
  return [
    ...[false, true].map((isSupposing) =>
      line(
        isSupposing ? 'suppositions' : 'records',
        countSlots(scored.filter((each) => each.isSupposing === isSupposing)),
      ),
    ),
    ...kinds.map((kind) => line(`  ${kind}`, countSlots(scored.filter((each) => each.kind === kind)))),
    ...[...faults]
      .sort((one, other) => other[1] - one[1])
      .slice(0, mostShown)
      .map(([name, count]) => `  ${count} x ${name}`),
  ];
};
