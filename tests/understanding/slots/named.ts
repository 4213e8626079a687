/** Checks of people, settings, figures and notes. */
import { bare, type Check } from './held.ts';
import { judge } from './judged.ts';
import { isNear, numberOf, textOf } from './label.ts';

const strip = (name: string): string =>
  name
    .toLowerCase()
    .replace(/^(?:the|my|our|a)\s+/, '')
    .replace(/['’]s?$/, '')
    .replace(/[^a-z0-9 ]/g, '')
    .trim();

export const whoCheck: Check = ({ slots, draft }) => {
  const wanted = textOf(slots.who);
  if (wanted === null) return [];
  return judge('who', wanted, draft.fields.who, draft.missing, (found) => {
    const [one, other] = [strip(wanted), strip(String(found))];
    return one.includes(other) || other.includes(one);
  });
};

const steps: readonly (readonly [string, RegExp])[] = [
  ['promised', /promis|order|reserv|want|owed|deposit|ask|book/],
  ['handed', /hand|collect|deliver|gave|given|picked|took|taken|fetched/],
  ['paid', /paid|settled|payment|pay/],
];

export const stepCheck: Check = ({ slots, draft }) => {
  const label = `${textOf(slots.what) ?? ''} ${textOf(slots.kind) ?? ''}`.toLowerCase();
  const meant = steps.flatMap(([step, pattern]) => (pattern.test(label) ? [step] : []));
  return meant.length === 0
    ? []
    : judge('step', meant.join(' or '), draft.fields.step, draft.missing, (step) =>
        meant.includes(String(step)),
      );
};

export const paidCheck: Check = ({ slots, draft }) => {
  const total = numberOf(slots.total);
  return total === null || draft.fields.step !== 'paid'
    ? []
    : judge(
        'paid',
        total,
        draft.fields.paid,
        draft.missing,
        (paid) => Math.abs(Number(paid) - total) < 0.011,
      );
};

/** Words of labels for settings that go by another name in the rule files. */
const settingWords: readonly (readonly [RegExp, readonly string[]])[] = [
  [/household|eaters|mouths|people/, ['eaters']],
  [/eaten|a week|per week/, ['birds-a-week']],
  [/freezer|\bfree\b/, ['freezer', 'freezer-free']],
  [/unit|celsius|metric/, ['units-system']],
  [/place|location/, ['place', 'place-at', 'country']],
  [/ground|field|paddock|strip/, ['ground', 'strips', 'strip-length', 'strip-width']],
  [/drinker|waterer/, ['drinkers', 'drinker-size']],
  [/feeder|trough/, ['feeders', 'feeder-length']],
  [/brooder/, ['brooder', 'brooder-temperature', 'room-temperature']],
  [/\bpens?\b|\bark\b|\bcover|roof/, ['pen', 'pens', 'pen-cover']],
  [/lamp|watt/, ['lamps', 'lamp-watts', 'heat-plates']],
  [
    /price|cost|charge|fee\b|electric/,
    ['feed-price', 'electricity-price', 'bird-price', 'processing-fee', 'labour-price'],
  ],
  [/bag/, ['bag']],
  [/night|low|high|normal/, ['low-', 'high-']],
  [/hands|helper|labour/, ['helpers', 'labour-price']],
  [/stock/, ['feed-in-stock']],
  [/carcass|weight/, ['wanted-carcass', 'own-kind-weight']],
  [/process|start/, ['process-at', 'process-on', 'processing-fee', 'plucker', 'helpers']],
];

export const settingCheck: Check = ({ slots, draft }) => {
  const label = textOf(slots.what);
  if (label === null) return [];
  const meant = settingWords.flatMap(([pattern, ids]) => (pattern.test(label.toLowerCase()) ? ids : []));
  const what =
    meant.length === 0
      ? []
      : judge('what', label, draft.fields.what, draft.missing, (found) =>
          meant.some((id) => String(found).startsWith(id)),
        );
  const size =
    textOf(slots.size) ??
    (typeof slots.value === 'string' && /\d\s*\w*\s*(?:x|by)\s*\d/.test(slots.value) ? slots.value : null);
  const found = draft.fields.value;
  if (size !== null) {
    const sides = (text: string): string => (text.match(/\d+(?:\.\d+)?/g) ?? []).join(' by ');
    return [
      ...what,
      ...(sides(size) === ''
        ? []
        : judge('value', size, found, draft.missing, (value) => sides(String(value)) === sides(size))),
    ];
  }
  const wanted = numberOf(slots.value ?? slots.price ?? slots.count);
  if (wanted === null) return what;
  return [...what, ...judge('value', wanted, found, draft.missing, (value) => isNear(bare(value), wanted))];
};

export const figureCheck: Check = ({ slots, draft }) => {
  const wanted = numberOf(slots.value);
  return wanted === null
    ? []
    : judge(
        'value',
        wanted,
        draft.fields.value,
        [...draft.missing],
        (value) => isNear(bare(value), wanted) || isNear(bare(value), wanted / 100),
      );
};

export const noteCheck: Check = ({ slots, draft }) => {
  const wanted = textOf(slots.note);
  if (wanted === null) return [];
  const words = wanted.toLowerCase().match(/[a-z0-9]+/g) ?? [];
  return judge('words', wanted, draft.fields.words, draft.missing, (found) => {
    const kept = new Set(
      String(found)
        .toLowerCase()
        .match(/[a-z0-9]+/g) ?? [],
    );
    return words.filter((word) => kept.has(word)).length >= 0.7 * words.length;
  });
};
