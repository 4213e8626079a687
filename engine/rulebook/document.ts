/** One YAML file: its data, its own faults, and where in the text each key stands. */
import { isCollection, isNode, isScalar, LineCounter, parseDocument } from 'yaml';
import type { Place, Problem } from '../problem.ts';

export type Path = readonly (string | number)[];

export interface RuleFile {
  /** Path relative to the rules folder, such as `figures/heat/floor.yaml`. */
  readonly file: string;
  readonly text: string;
}

export interface RuleDocument {
  readonly file: string;
  readonly data: unknown;
  readonly problems: readonly Problem[];
  /** A problem at the node under a path (or at its nearest parent that exists). */
  problemAt(path: Path, code: string, data: Problem['data'], grave?: boolean): Problem;
}

/** Deeper nesting than any rule needs is refused, so that a hostile file cannot exhaust the stack. */
const deepest = 40;

const depthOf = (text: string): number =>
  text
    .split('\n')
    .reduce((most, line) => Math.max(most, (line.length - line.trimStart().length) / 2, (line.match(/[[{]/g) ?? []).length), 0);

/** Reads one rule file. Never throws on bad YAML: its faults come back as problems with line and column. */
export const readDocument = ({ file, text }: RuleFile): RuleDocument => {
  const lines = text.split(/\r?\n/);
  const counter = new LineCounter();
  const safe = depthOf(text) <= deepest;
  const document = parseDocument(safe ? text : '', { lineCounter: counter, uniqueKeys: true, prettyErrors: false });

  const problem = (at: Place, code: string, data: Problem['data'], grave: boolean): Problem => ({
    code,
    at,
    raw: lines[at.line - 1] ?? '',
    data,
    grave,
    touches: ['rules'],
  });
  const placeOf = (offset: number, length: number): Place => {
    const { line, col } = counter.linePos(offset);
    return { file, line: Math.max(1, line), column: Math.max(1, col), length: Math.max(1, length) };
  };
  const problemAt: RuleDocument['problemAt'] = (path, code, data, grave = true) => {
    for (let keep = path.length; keep > 0; keep -= 1) {
      const node = document.getIn(path.slice(0, keep), true);
      if (isNode(node) && node.range) {
        const [start, end] = node.range;
        return problem(placeOf(start, isScalar(node) ? end - start : 1), code, data, grave);
      }
    }
    return problem({ file, line: 1, column: 1, length: 1 }, code, data, grave);
  };
  const faults = document.errors.map((error) =>
    problem(placeOf(error.pos[0], error.pos[1] - error.pos[0]), 'not-yaml', { says: error.code }, true),
  );
  const shapeless = safe && !isCollection(document.contents) && faults.length === 0;
  const extra = shapeless || !safe ? [problem({ file, line: 1, column: 1 }, safe ? 'empty-file' : 'too-deep', {}, true)] : [];
  const good = faults.length === 0 && extra.length === 0;
  // Aliases are capped so that a small file cannot unfold into a huge one.
  return { file, data: good ? document.toJS({ maxAliasCount: 20 }) : undefined, problems: [...faults, ...extra], problemAt };
};
