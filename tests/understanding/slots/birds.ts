/** Checks of which birds, how many, when and why. */
import { daysMeant } from './day-meant.ts';
import { type Check, saysNumber, spokenOn } from './held.ts';
import { invented, judge } from './judged.ts';
import { groupOf, numberOf, textOf } from './label.ts';

const fieldCheck =
  (slot: string, label: string = slot): Check =>
  ({ slots, draft, text }) => {
    const wanted = numberOf(slots[label]);
    const found = draft.fields[slot];
    if (wanted === null) {
      const isMade = typeof found === 'number' && found > 1 && saysNumber(text, found);
      return isMade && slots[label] === undefined ? invented(slot, found) : [];
    }
    return judge(slot, wanted, found, draft.missing, (value) => value === wanted);
  };

/** Half a bird cannot be written, so that it is right to ask. */
export const countCheck: Check = (held) => {
  const wanted = numberOf(held.slots.count);
  if (wanted === null || Number.isInteger(wanted)) return fieldCheck('count')(held);
  return held.draft.fields.count === undefined ? [] : fieldCheck('count')(held);
};

export const onCheck: Check = ({ slots, draft, text }) => {
  const said = daysMeant(slots.on, spokenOn);
  if (slots.on === undefined) {
    const meant = daysMeant(text, spokenOn);
    return draft.on === spokenOn || meant === null || meant.has(draft.on) ? [] : invented('on', draft.on);
  }
  // Nothing but weather is told ahead: a day to come is another field's.
  if (said === null || ([...said].every((day) => day > spokenOn) && draft.kind !== 'weather')) return [];
  return judge('on', slots.on, draft.on, draft.missing, (day) => said.has(String(day)));
};

export const groupCheck: Check = ({ slots, draft, assumed, text }) => {
  const wanted = groupOf(slots.group);
  const found = draft.fields.group;
  if (slots.group === undefined) {
    const isSaid = assumed.some((each) => each.startsWith('taking the')) || groupOf(text) !== null;
    return found === undefined || isSaid ? [] : invented('group', found);
  }
  if (wanted === null) return [];
  if (wanted === 'both') return [];
  return judge('group', wanted, found, draft.missing, (group) => String(group).startsWith(wanted));
};

const named = (
  words: Readonly<Record<string, { readonly words: readonly string[] }>>,
  said: string,
): ReadonlySet<string> => {
  const bareWords = ` ${said.toLowerCase().replace(/[^a-z0-9']+/g, ' ')} `;
  return new Set(
    Object.entries(words).flatMap(([id, each]) =>
      each.words.some((word) => bareWords.includes(` ${word} `)) ? [id] : [],
    ),
  );
};

export const causeCheck: Check = ({ book, slots, draft, text }) => {
  const label = textOf(slots.cause);
  const found = draft.fields.cause;
  if (label === null) {
    const meant = named(book.words.causes, text);
    return found === undefined || found === 'unknown' || meant.has(String(found))
      ? []
      : invented('cause', found);
  }
  const meant = named(book.words.causes, label);
  // A cause in no list cannot be told apart here.
  if (meant.size === 0) return [];
  return judge('cause', label, found, draft.missing, (cause) => meant.has(String(cause)));
};

export const signCheck: Check = ({ book, slots, draft }) => {
  const label = textOf(slots.sign);
  const found = draft.fields.sign;
  const meant = named(book.words.signs, label ?? '');
  // What is in no list is kept in the keeper's own words.
  return meant.size === 0
    ? []
    : judge('sign', label, found === 'other' ? undefined : found, draft.missing, (sign) =>
        meant.has(String(sign)),
      );
};

export const arrivedCount: Check = ({ slots, draft }) => {
  const wanted = numberOf(slots.count);
  const dead = numberOf(slots.dead) ?? 0;
  if (wanted === null) return [];
  // Nobody can tell by the label whether the dead are among the number.
  return judge(
    'count',
    wanted,
    draft.fields.count,
    draft.missing,
    (count) => count === wanted || count === wanted + dead,
  );
};

export const deadCheck: Check = ({ slots, draft }) => {
  const wanted = numberOf(slots.dead);
  const found = draft.fields.dead;
  if (wanted === null)
    return found === undefined || found === 0 || slots.dead !== undefined ? [] : invented('dead', found);
  return wanted === 0 && found === undefined
    ? []
    : judge('dead', wanted, found, draft.missing, (dead) => dead === wanted);
};
