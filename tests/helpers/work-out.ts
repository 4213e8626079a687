/** Facts worked out over a plain state with the shipped rulebook, for tests of one model at a time. */
import { allFacts } from '../../engine/facts/index.ts';
import { openWorkings, type Workings } from '../../engine/facts/workings.ts';
import type { Rulebook, State, Supposition, Words } from '../../engine/types.ts';
import { rulebook } from './rulebook-of.ts';

const { book } = rulebook();

/** A few signs and causes, so that no test hangs on the shipped vocabulary. */
const words: Words = {
  ...book.words,
  causes: {
    hawk: { class: 'hunter', words: [] },
    crush: { class: 'crush', words: [] },
    coccidiosis: { class: 'illness', words: [] },
    unknown: { class: 'unknown', words: [] },
  },
  signs: {
    piled: { class: 'behaviour', words: [] },
    even: { class: 'behaviour', words: [] },
    lethargic: { class: 'illness', words: [] },
    'pasty-vent': { class: 'illness', words: [] },
    pecking: { class: 'behaviour', words: [] },
    gasping: { class: 'illness', words: [] },
    feathered: { class: 'feather', words: [] },
  },
};

/** The shipped rulebook with that vocabulary. */
export const bookForTests: Rulebook = { ...book, words };

/** The workings of a state, on its own day unless another is given. */
export const workOut = (state: State, on = state.on, supposing: readonly Supposition[] = []): Workings =>
  openWorkings({ state, book: bookForTests, facts: allFacts, on, until: null, supposing });

/** What one fact comes to in base units; null when unknown. */
export const worth = (state: State, fact: string, on = state.on, group: string | null = 'whites') =>
  workOut(state, on).step(fact, group).value;

/** What one fact comes to over a span that ends on a day, that day included. */
export const worthUntil = (state: State, fact: string, until: string, group: string | null = 'whites') =>
  openWorkings({ state, book: bookForTests, facts: allFacts, on: state.on, until, supposing: [] }).step(
    fact,
    group,
  ).value;
