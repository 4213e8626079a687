/** What the values of a line may be meant for, where it supposes something: by what was learned of the kinds of change. */
import type { Line } from './find/all.ts';
import { sideOf } from './find/low-or-high.ts';
import type { LikelyKinds, Placing } from './find/supposable.ts';
import { cuesOf, kindCuesOf } from './learn/cues.ts';
import { mixed, weigh } from './learn/weigh.ts';
import type { Lexicon } from './lexicon.ts';
import type { About } from './types.ts';

/** How many tokens to either side of a value tell what it is a value of. */
const beside = 2;

/** How much letters count beside words. */
const lettersCount = 0.5;

/** Of the low and the high, the one that the words nearest to a value do not say is so much less likely. */
const otherSide = 0.1;
const kindOfSide = { low: 'night-low', high: 'high' } as const;

/** The chances of a low and a high beside what the words about the values say: "hits 95" is no low, whatever was asked. */
const besideSides = (line: Line, chances: ReadonlyMap<string, number>): ReadonlyMap<string, number> => {
  const sides = new Set(
    line.spans.flatMap((span) =>
      span.kind === 'number' || (span.kind === 'quantity' && span.dimension === 'temperature')
        ? (sideOf(line.tokens, span.from) ?? [])
        : [],
    ),
  );
  const [side, other] = sides;
  if (side === undefined || other !== undefined) return chances;
  const less = kindOfSide[side === 'low' ? 'high' : 'low'];
  const more = kindOfSide[side];
  const moved = (chances.get(less) ?? 0) * (1 - otherSide);
  return new Map(chances)
    .set(less, (chances.get(less) ?? 0) - moved)
    .set(more, (chances.get(more) ?? 0) + moved);
};

/** What a line about a topic is likely to suppose. */
const likelyIn = (lexicon: Lexicon, line: Line, topic: string): LikelyKinds => {
  const cues = cuesOf(line, lexicon.classOf);
  const ids = kindCuesOf(cues, topic);
  const { chances: byWords, saidFor } = weigh(lexicon.kindWords, ids.words);
  const { chances: byLetters } = weigh(lexicon.kindLetters, ids.letters);
  const chances = mixed(lexicon.kindWords.topics, [byWords, 1 - lettersCount], [byLetters, lettersCount]);
  return {
    chances: besideSides(line, chances),
    saidAbout: (kind, { from, to }) => {
      const weights = saidFor(kind);
      return cues.words.reduce((sum, cue, at) => {
        const isBeside = cue.to - cue.from === 1 && cue.from >= from - beside && cue.to <= to + beside;
        return isBeside ? sum + (weights[at] ?? 0) : sum;
      }, 0);
    },
  };
};

/** What placing the values of a line goes by, for a question that it asks; weighed when something is first to be placed. */
export const placingFor = (lexicon: Lexicon, line: Line, topic: string, about: About): Placing => {
  let likely: LikelyKinds | undefined;
  const taken = new Set(Object.values(about.book.questions[topic]?.takes ?? {}));
  return {
    facts: about.book.facts,
    get likely() {
      likely ??= likelyIn(lexicon, line, topic);
      return likely;
    },
    figures: about.book.figures,
    taken,
    bag: about.measures.bag?.kg ?? 0,
  };
};
