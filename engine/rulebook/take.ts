/** The documents of one folder as parts of a rulebook by their ids, with what is wrong with their shape. */
import type { z } from 'zod';
import type { Problem } from '../problem.ts';
import type { RuleDocument } from './document.ts';
import { shaped } from './shaped.ts';

/** Takes the parts of one folder after another: `kind:id` goes to the documents, and what is wrong to the problems. */
export type Take = <S, T>(
  folder: string,
  kind: string,
  schema: z.ZodType<S>,
  from: (id: string, data: S) => T,
) => Record<string, T>;

/** `figures/heat/floor.yaml` → `heat/floor`: the path below its kind's folder is the id. */
const idOf = (file: string): string => file.replace(/^[^/]+\//, '').replace(/\.yaml$/, '');

/** Takes from these documents, adding to the maps and lists that the caller keeps. */
export const takeFrom =
  (all: readonly RuleDocument[], documents: Map<string, RuleDocument>, problems: Problem[]): Take =>
  (folder, kind, schema, from) =>
    Object.fromEntries(
      all
        .filter(({ file }) => file.startsWith(`${folder}/`))
        .flatMap((document) => {
          const id = idOf(document.file);
          const { data, problems: found } = shaped(document, schema);
          problems.push(...found);
          documents.set(`${kind}:${id}`, document);
          return data === undefined ? [] : [[id, from(id, data)] as const];
        }),
    );
