/** Labelled lines as keepers speak them: `rules/voices/*.jsonl`, one JSON object a line, one file a voice. */
import type { About } from '../types.ts';

/** A line and what it means. `topic` is a question's id, `tell:` and an entry kind, or `none` for what lies outside. */
export interface Spoken {
  readonly text: string;
  readonly topic: string;
  /** Other topics that are a fair reading. */
  readonly also: readonly string[];
  /** The earlier line of the same voice that it follows up on. */
  readonly after: string | null;
  /** The danger that a line outside speaks of: an id of `hazards` in `rules/words.yaml`. */
  readonly hazard: string | null;
  /** The kind of change that it supposes: a `kind` of `supposed-by` in rules/facts, or one that no fact takes. */
  readonly supposes: string | null;
}

/** The day and the birds that the labelled lines speak of: whites on grass, reds in the brooder, in the middle of May. */
export const spokenAt: Pick<About, 'today' | 'system' | 'groups'> = {
  today: '2026-05-14',
  system: 'us',
  groups: [
    { name: 'whites', kind: 'fast', place: 'pen', hatched: '2026-04-07', alive: 48 },
    { name: 'reds', kind: 'slow', place: 'brooder', hatched: '2026-04-21', alive: 30 },
  ],
};

/** The topic of a line that nothing here answers. */
export const outside = 'none';
/** What a line is taken for that asks on about what was asked before. */
export const sameAgain = 'same';

/** What a question that names a value and supposes nothing is taken to suppose. */
export const nothing = 'nothing';

/** What a line outside that speaks of a danger is taken for. */
export const hazardTopic = (hazard: string): string => `${outside}:${hazard}`;

/** Birds that go are supposed in other words than birds that come. */
const kindOf = ({
  changed,
  delta,
}: {
  readonly changed?: string;
  readonly delta?: unknown;
}): string | null =>
  changed === undefined
    ? null
    : `${changed.replaceAll(' ', '-')}${changed === 'birds' && Number(delta) < 0 ? '-away' : ''}`;

/** Reads the lines of one voice. @throws on a line that is no JSON, which is a fault of the file */
export const readSpoken = (text: string): readonly Spoken[] =>
  text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const { text: said, topic, also = [], after = null, hazard = null, whatIf, slots } = JSON.parse(line);
      const supposes = whatIf === true ? kindOf(slots ?? {}) : null;
      return { text: said, topic, also, after, hazard, supposes };
    });

/** The topics to learn for each line of one voice: `same` where it goes on with the topic of the line before it. */
export const wantedIn = (voice: readonly Spoken[]): readonly (readonly string[])[] => {
  const topics = new Map(voice.map((each) => [each.text, each.topic]));
  return voice.map(({ topic, also, after, hazard }) => {
    if (topic === outside && hazard !== null) return [hazardTopic(hazard), ...also];
    if (after === null) return [topic, ...also];
    const before = topics.get(after);
    return before === undefined ? [] : [before === topic ? sameAgain : topic, ...also];
  });
};
