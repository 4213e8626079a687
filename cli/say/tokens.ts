/** The only vocabulary of output: what can be said to the keeper, before anyone decides how wide or in which colour. */

/** Outcome words exactly as the keeper reads them. */
export type OutcomeWord = 'held' | 'failed' | 'not known';

/**
 * One thing to say. Texts are plain sentences without lead word, number, outcome or colour: `parts.ts` adds the words
 * that let each token be read alone. Texts may hold anything a keeper typed; they are cleaned when they are shown.
 */
export type Token =
  /** The verdict or amount, in one line. */
  | { readonly t: 'claim'; readonly text: string }
  /** A numbered reason; `note` is what stands behind it, such as its source. */
  | {
      readonly t: 'reason';
      readonly n: number;
      readonly text: string;
      readonly outcome: OutcomeWord | null;
      readonly note?: string;
    }
  /** A figure with value, date and source. */
  | { readonly t: 'figure'; readonly text: string }
  /** What is not known and matters; `tell` is a line the keeper could type to settle it. */
  | { readonly t: 'unknown'; readonly text: string; readonly tell: string | null }
  | { readonly t: 'caution'; readonly text: string }
  /** What would change the answer, or what can be asked next: a whole sentence. */
  | { readonly t: 'next'; readonly text: string }
  /** Secondary matter: assumptions, references, remarks. */
  | { readonly t: 'detail'; readonly text: string }
  | { readonly t: 'heading'; readonly text: string }
  /** A task of the daily round; `at` is `now`, `morning`, `midday`, `evening` or `soon`. `id` is for scripts, never shown. */
  | {
      readonly t: 'step';
      readonly id: string;
      readonly text: string;
      readonly at: string;
      readonly done: boolean;
    }
  /** A task on a sheet for a helper, with what belongs to it on lines of their own: where, by when, how to see that it went right. */
  | {
      readonly t: 'task';
      readonly n: number;
      readonly text: string;
      readonly notes: readonly string[];
    }
  /** One of several readings offered back; the keeper answers with its number. */
  | { readonly t: 'choice'; readonly n: number; readonly text: string }
  /** Lines drawn with characters, for windows of several widths, the widest first; and the sentence that says the same. */
  | {
      readonly t: 'picture';
      readonly drawings: readonly (readonly string[])[];
      readonly says: string;
    }
  | { readonly t: 'blank' };

/** What the words are about, for a view that can tint them; it never says more than the words do. */
export type Tone = 'plain' | 'aside' | 'held' | 'failed' | 'not known' | 'careful';
