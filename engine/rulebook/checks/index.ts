/** The named checks of a rulebook, run all together; each gives every problem it finds with its place. */
import type { Problem } from '../../problem.ts';
import type { Rulebook } from '../../types.ts';
import type { RuleDocument } from '../document.ts';
import { choreExplained } from './chore-explained.ts';
import { emptyList } from './empty-list.ts';
import { factWords } from './fact-words.ts';
import { figureShape } from './figure-shape.ts';
import { leafSides } from './leaf-sides.ts';
import { questionRules } from './question-rules.ts';
import { ruleCases } from './rule-cases.ts';
import { supposedBy } from './supposed-by.ts';
import { tieWithoutRank } from './tie-without-rank.ts';
import { unknownNames } from './unknown-names.ts';
import { unusedFigure } from './unused-figure.ts';

/** What the checks need to know of a fact: the engine's list comes in as an argument. */
export interface KnownFact {
  readonly id: string;
  /** Base unit, `date`, or null for a choice or a yes or no. */
  readonly unit: string | null;
  readonly figures: readonly string[];
}

/** What the rest of the engine brings along: its facts, and the figures that it reads outside of facts and rules. */
export interface Known {
  readonly facts: readonly KnownFact[];
  readonly figures: readonly string[];
}

export interface Checked {
  readonly book: Rulebook;
  /** `rule:go-out/too-young` → the document that a part came from. */
  readonly documents: ReadonlyMap<string, RuleDocument>;
}

export type RulebookCheck = (checked: Checked, known: Known) => readonly Problem[];

const checks: readonly RulebookCheck[] = [
  figureShape,
  unknownNames,
  emptyList,
  leafSides,
  ruleCases,
  questionRules,
  factWords,
  supposedBy,
  unusedFigure,
  choreExplained,
];

/** Runs all checks. Whether rules tie is only asked of rules without another fault, which may be the cause of it. */
export const checkRulebook: RulebookCheck = (checked, known) => {
  const found = checks.flatMap((check) => check(checked, known));
  const faulty = new Set(found.map(({ at }) => at.file));
  const isSound = (rule: unknown): boolean => !faulty.has(checked.documents.get(`rule:${rule}`)?.file ?? '');
  const ties = tieWithoutRank(checked, known).filter(
    ({ data }) => isSound(data.rule) && (data.other === undefined || isSound(data.other)),
  );
  return [...found, ...ties];
};
