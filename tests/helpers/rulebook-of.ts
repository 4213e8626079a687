/** The shipped rulebook as the tests see it: read from the YAML, with the problems found. */
import { known } from '../../engine/index.ts';
import { buildRulebook, readRuleFiles } from '../../engine/rulebook/load.ts';

export const ruleFolder = new URL('../../rules', import.meta.url).pathname;

/** Loads rules/ afresh, so that no test can spoil another's. */
export const rulebook = () => buildRulebook(readRuleFiles(ruleFolder), known);
