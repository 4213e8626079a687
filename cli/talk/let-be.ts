/** A record that was left half told: once something else is said, it is not written, and that is said. */
import type { Token } from '../say/tokens.ts';
import type { Draft } from '../understand/types.ts';
import type { Memory, Reply } from './reply.ts';

/** Whether anything of it was told; of a setting its name alone is nothing yet. */
const isBegun = (fields: Readonly<Record<string, unknown>>): boolean =>
  Object.keys(fields).some((name) => name !== 'what');

/** Whether a draft has all that was told of another: the same one, with the answer added. */
const goesOn = (before: Draft, after: Draft): boolean =>
  before.kind === after.kind &&
  Object.entries(before.fields).every(([name, value]) => after.fields[name] === value);

/** What is said of the record that `before` was asking about, where the reply to the next line has left it. */
export const sayLetBe = (before: Memory, { record, memory }: Reply): readonly Token[] => {
  const { asking, heard } = before;
  if (asking === null || heard === null || !isBegun(asking.draft.fields)) return [];
  // Written, refused with its reasons, or still being asked for.
  const isWritten = (record?.recorded ?? []).some(
    (each) => 'kind' in each && each.kind === asking.draft.kind,
  );
  if (isWritten || (record !== null && record.recorded === null && record.problems.length > 0)) return [];
  if (memory.asking !== null && goesOn(asking.draft, memory.asking.draft)) return [];
  return [
    { t: 'caution', text: `"${heard.words.trim()}" is not written, as something was still to say of it.` },
  ];
};
