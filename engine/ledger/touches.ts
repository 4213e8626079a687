/** What a broken entry makes doubtful: its group, its kind, or, where nothing about it can be read, every kind. */
import { kindNamed, kinds } from './kinds/index.ts';

/** Of an entry of which kind and group are known as far as they could be read. */
export const touchesOf = (kindName: unknown, group: unknown): readonly string[] => {
  const kind = kindNamed(kindName);
  const groups = typeof group === 'string' ? [`group:${group}`] : [];
  if (kind === undefined) return kinds.map((each) => each.kind);
  return kind.concerns === 'group' && groups.length > 0 ? groups : [kind.kind, ...groups];
};

/** Of a line that is no JSON; the kind may still be legible in it. */
export const touchesOfText = (raw: string): readonly string[] =>
  touchesOf(/"kind"\s*:\s*"([a-z]+)"/.exec(raw)?.[1], undefined);
