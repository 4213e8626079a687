/** One YAML file: its data, its own faults, and where in the text each key stands. */
import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  parseDocument,
  visit,
} from 'yaml';
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
  /** A problem at what stands under a path (or at its nearest parent that exists): at a short value itself, at the key of a longer one. */
  problemAt(path: Path, code: string, data: Problem['data']): Problem;
  /** A problem at the last key of a path. */
  problemAtKey(path: Path, code: string, data: Problem['data']): Problem;
}

/** Deeper nesting than any rule needs is refused, so that a hostile file cannot exhaust the stack. */
const deepest = 40;
const mostAliases = 20;
/** So much may stand behind one alias, all that it stands for in turn written out. */
const mostUnfolded = 2000;

/** How deep a text nests, by what its lines begin with or by brackets open at once. It is looked at before parsing, which recurses. */
const depthOf = (text: string): number => {
  let open = 0;
  let deepestYet = 0;
  for (const [sign] of text.matchAll(/[[\]{}]|^[ ?-]+/gm)) {
    if (sign === '[' || sign === '{') open += 1;
    else if (sign === ']' || sign === '}') open = Math.max(0, open - 1);
    deepestYet = Math.max(deepestYet, open, /^[ ?-]/.test(sign) ? sign.length / 2 : 0);
  }
  return deepestYet;
};

/** How many values a part holds once every alias in it is written out. Not for one that stands for itself. */
const unfolded = (node: unknown, document: Document, known = new Map<unknown, number>()): number => {
  const before = known.get(node);
  if (before !== undefined) return before;
  // An alias back to what is being counted stands for nothing more; it is reported where it stands.
  known.set(node, 0);
  const inner = isAlias(node)
    ? [node.resolve(document)]
    : isPair(node)
      ? [node.key, node.value]
      : isCollection(node)
        ? node.items
        : [];
  const size = inner.reduce((sum: number, each) => sum + unfolded(each, document, known), 1);
  known.set(node, size);
  return size;
};

/** Reads one rule file. Never throws on bad YAML: its faults come back as problems with line and column. */
export const readDocument = ({ file, text }: RuleFile): RuleDocument => {
  const lines = text.split(/\r?\n/);
  const counter = new LineCounter();
  const safe = depthOf(text) <= deepest;
  const document = parseDocument(safe ? text : '', {
    lineCounter: counter,
    uniqueKeys: true,
    prettyErrors: false,
    // Faults come back as problems; nothing is written past the caller.
    logLevel: 'error',
  });

  const problem = (at: Place, code: string, data: Problem['data']): Problem => ({
    code,
    at,
    raw: lines[at.line - 1] ?? '',
    data,
    grave: true,
    touches: ['rules'],
  });
  const placeOf = (start: number, end: number): Place => {
    const { line, col } = counter.linePos(start);
    return { file, line: Math.max(1, line), column: Math.max(1, col), length: Math.max(1, end - start) };
  };
  const nodeAt = (path: Path): unknown =>
    path.length === 0 ? document.contents : document.getIn(path, true);
  const placeOfNode = (node: unknown): Place | undefined =>
    isNode(node) && node.range ? placeOf(node.range[0], node.range[1]) : undefined;
  const placeOfKey = (path: Path): Place | undefined => {
    const parent = nodeAt(path.slice(0, -1));
    const pair = isMap(parent)
      ? parent.items.find(({ key }) => isScalar(key) && String(key.value) === String(path.at(-1)))
      : undefined;
    return placeOfNode(pair?.key);
  };
  const top: Place = { file, line: 1, column: 1, length: 1 };
  const placeUnder = (path: Path): Place => {
    if (path.length === 0) return top;
    const node = nodeAt(path);
    if (isScalar(node)) return placeOfNode(node) ?? top;
    if (!isCollection(node)) return placeUnder(path.slice(0, -1));
    const start = node.range?.[0] ?? 0;
    return placeOfKey(path) ?? placeOf(start, start + 1);
  };
  const faults = document.errors.map((error) =>
    problem(placeOf(...error.pos), 'not-yaml', { says: error.code }),
  );
  // An alias may stand for something once said above; never for itself or for nothing, nor often enough to unfold into much.
  let aliases = 0;
  visit(document, {
    Alias: (_, alias, within) => {
      aliases += 1;
      const isInside = within.some(
        (node) => isNode(node) && 'anchor' in node && node.anchor === alias.source,
      );
      const stands = alias.resolve(document);
      const isTooMuch = () => unfolded(stands, document) > mostUnfolded;
      if (isInside || aliases > mostAliases || stands === undefined || isTooMuch())
        faults.push(problem(placeOfNode(alias) ?? top, 'wrong-alias', { found: alias.source }));
    },
  });
  const shapeless = safe && !isCollection(document.contents) && faults.length === 0;
  const extra = shapeless || !safe ? [problem(top, safe ? 'empty-file' : 'too-deep', {})] : [];
  const good = faults.length === 0 && extra.length === 0;
  return {
    file,
    // Aliases are counted and measured above.
    data: good ? document.toJS({ maxAliasCount: -1 }) : undefined,
    problems: [...faults, ...extra],
    problemAt: (path, code, data) => problem(placeUnder(path), code, data),
    problemAtKey: (path, code, data) => problem(placeOfKey(path) ?? placeUnder(path), code, data),
  };
};
