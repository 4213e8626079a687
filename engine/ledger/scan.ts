/** Where every key and value of a JSON line stands, or where and how the line stops being JSON. */
import { type Reach, reachScalar, reachString, skipSpace } from './json-tokens.ts';

/** A stretch of a line, counted from 0. */
export interface Span {
  readonly at: number;
  readonly length: number;
}

/** A value in the line and, inside an object, its key. */
export interface Part {
  readonly key: Span | null;
  readonly value: Span;
}

/**
 * `parts` are found by path: `count`, `weights.2`, `with.count`; the whole line is at the empty path. `duplicates` are
 * the paths of keys that stand twice in one object; as in JSON.parse, the last of them is the one that is found.
 * `unfinished` says that the line is good as far as it goes and was cut off.
 */
export type Scan =
  | { readonly ok: true; readonly parts: ReadonlyMap<string, Part>; readonly duplicates: readonly string[] }
  | { readonly ok: false; readonly at: number; readonly unfinished: boolean };

interface Container {
  readonly closes: '}' | ']';
  readonly path: string;
  readonly at: number;
  readonly key: Span | null;
  readonly names: Set<string>;
  count: number;
}

// Entries nest no deeper than `with.weights.2`. Deeper values are checked but not remembered, so that a hostile line stays cheap.
const DEEPEST = 3;

/** Reads one line of JSON without building its value. Walks once and never recurses. */
export const scanLine = (raw: string): Scan => {
  const parts = new Map<string, Part>();
  const duplicates: string[] = [];
  const open: Container[] = [];
  let expects: 'value' | 'value-or-close' | 'key' | 'key-or-close' | 'next' = 'value';
  let key: Span | null = null;
  let path = '';
  let at = skipSpace(raw, 0);

  const stopAt = (where: number): Scan => ({ ok: false, at: where, unfinished: where >= raw.length });
  const keep = (where: string, part: Part): void => {
    if (open.length <= DEEPEST) parts.set(where, part);
  };
  const pathBelow = (inside: Container, name: string): string => {
    if (open.length > DEEPEST) return '';
    return inside.path === '' ? name : `${inside.path}.${name}`;
  };

  do {
    const letter = raw[at];
    const inside = open.at(-1);
    if (inside !== undefined && letter === inside.closes && expects !== 'value' && expects !== 'key') {
      open.pop();
      at += 1;
      keep(inside.path, { key: inside.key, value: { at: inside.at, length: at - inside.at } });
      expects = 'next';
    } else if (inside !== undefined && expects === 'next') {
      if (letter !== ',') return stopAt(at);
      at += 1;
      inside.count += 1;
      expects = inside.closes === '}' ? 'key' : 'value';
    } else if (inside !== undefined && (expects === 'key' || expects === 'key-or-close')) {
      const reach: Reach = letter === '"' ? reachString(raw, at) : { to: at, good: false };
      if (!reach.good) return stopAt(reach.to);
      const name = String(JSON.parse(raw.slice(at, reach.to)));
      key = { at, length: reach.to - at };
      path = pathBelow(inside, name);
      if (inside.names.has(name) && open.length <= DEEPEST) duplicates.push(path);
      inside.names.add(name);
      at = skipSpace(raw, reach.to);
      if (raw[at] !== ':') return stopAt(at);
      at += 1;
      expects = 'value';
    } else {
      if (inside?.closes === ']') {
        key = null;
        path = pathBelow(inside, String(inside.count));
      }
      if (letter === '{' || letter === '[') {
        open.push({ closes: letter === '{' ? '}' : ']', path, at, key, names: new Set(), count: 0 });
        at += 1;
        expects = letter === '{' ? 'key-or-close' : 'value-or-close';
      } else {
        const reach = letter === '"' ? reachString(raw, at) : reachScalar(raw, at);
        if (!reach.good) return stopAt(reach.to);
        keep(path, { key, value: { at, length: reach.to - at } });
        at = reach.to;
        expects = 'next';
      }
    }
    at = skipSpace(raw, at);
  } while (open.length > 0 && at < raw.length);

  if (open.length > 0) return stopAt(raw.length);
  return at < raw.length ? { ok: false, at, unfinished: false } : { ok: true, parts, duplicates };
};
