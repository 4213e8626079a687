/** A document held against its strict shape: the data, or every fault with its place and the key that was meant. */
import { z } from 'zod';
import type { Problem } from '../problem.ts';
import type { Path, RuleDocument } from './document.ts';
import { nearest } from './nearest.ts';

type Issue = z.core.$ZodIssue;

/** The keys that a shape has at a path, however it is nested; empty where any key goes. */
const keysAt = (schema: z.core.$ZodType, path: Path): readonly string[] => {
  if (schema instanceof z.ZodLazy || schema instanceof z.ZodOptional) return keysAt(schema.unwrap(), path);
  const [key, ...rest] = path;
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((each) => keysAt(each, path));
  if (schema instanceof z.ZodArray && key !== undefined) return keysAt(schema.element, rest);
  if (schema instanceof z.ZodRecord && key !== undefined) return keysAt(schema.valueType, rest);
  if (!(schema instanceof z.ZodObject)) return [];
  if (key === undefined) return Object.keys(schema.shape);
  const inner = schema.shape[key];
  return inner === undefined ? [] : keysAt(inner, rest);
};

/** How far a value is from a shape: a key that does not belong there weighs as much as any other fault. */
const faultsIn = (issues: readonly Issue[]): number =>
  issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0);

const depthOf = (issues: readonly Issue[]): number => Math.max(...issues.map(({ path }) => path.length));

/** Where several shapes were possible, the faults of the one that was nearly met, with their whole paths. */
const nearestIssues = (issue: Issue): readonly Issue[] => {
  if (issue.code !== 'invalid_union') return [issue];
  const byShape = issue.errors.map((inner) =>
    inner.flatMap((each) => nearestIssues({ ...each, path: [...issue.path, ...each.path] })),
  );
  const [best = [issue]] = byShape.sort((a, b) => faultsIn(a) - faultsIn(b) || depthOf(b) - depthOf(a));
  return best;
};

const problemsOf = (document: RuleDocument, schema: z.ZodType, error: z.ZodError): Problem[] =>
  error.issues.flatMap(nearestIssues).flatMap((issue): Problem[] => {
    const path = issue.path as (string | number)[];
    if (issue.code === 'unrecognized_keys') {
      const known = keysAt(schema, path);
      return issue.keys.map((key) => {
        const suggestion = nearest(key, known);
        return document.problemAtKey([...path, key], 'unknown-key', {
          found: key,
          ...(known.length > 0 ? { wants: known } : {}),
          ...(suggestion === undefined ? {} : { suggestion }),
        });
      });
    }
    const data = { key: path.join('.'), wants: issue.message.replace(/^Invalid (input|option): /, '') };
    if (issue.code === 'invalid_key') {
      return [
        document.problemAtKey(path, 'wrong-shape', {
          ...data,
          wants: issue.issues[0]?.message ?? data.wants,
        }),
      ];
    }
    const missing = issue.code === 'invalid_type' && issue.message.endsWith('received undefined');
    return [document.problemAt(path, missing ? 'missing-key' : 'wrong-shape', data)];
  });

/** Checks a document's data against a shape: the data, or the problems with their places. */
export const shaped = <T>(
  document: RuleDocument,
  schema: z.ZodType<T>,
): { readonly data: T | undefined; readonly problems: readonly Problem[] } => {
  if (document.data === undefined) return { data: undefined, problems: document.problems };
  const result = schema.safeParse(document.data);
  return result.success
    ? { data: result.data, problems: document.problems }
    : { data: undefined, problems: [...document.problems, ...problemsOf(document, schema, result.error)] };
};
