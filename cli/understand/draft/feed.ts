/** Feed given, from words; without a group it went to all. Several groups named with an amount each make a record each. */
import { spansOf } from '../spans.ts';
import { groupsFed, namedGroups } from './group.ts';
import { readMass } from './mass.ts';
import { rationIn } from './ration.ts';
import { type Build, known, lacking, type Told } from './told.ts';

const hasAmount = ({ spans }: Told['line']): boolean =>
  spans.some(({ kind }) => kind === 'number' || kind === 'quantity');

/** The line cut between its groups, so that each part has one group and an amount: `8 scoops whites 3 reds`. */
const partsByGroup = (told: Told): readonly Told[] | null => {
  const groups = spansOf(told.line.spans, 'group').filter(({ names }) => names.length === 1);
  const names = new Set(groups.flatMap(({ names }) => names));
  if (groups.length < 2 || names.size !== groups.length) return null;
  const amounts = told.line.spans.filter(({ kind }) => kind === 'number' || kind === 'quantity');
  const isBefore = (amounts[0]?.from ?? 0) < (groups[0]?.from ?? 0);
  const bounds = groups.map((group, at) =>
    isBefore
      ? { from: at === 0 ? 0 : (groups[at - 1]?.to ?? 0), to: group.to }
      : { from: group.from, to: groups[at + 1]?.from ?? told.line.tokens.length },
  );
  const parts = bounds.map(({ from, to }): Told => {
    const spans = told.line.spans.filter((span) => from <= span.from && span.to <= to);
    // Spans are counted from the first token of the part, as if it were a line.
    const moved = spans.map((span) => ({ ...span, from: span.from - from, to: span.to - from }));
    return { ...told, line: { tokens: told.line.tokens.slice(from, to), spans: moved } };
  });
  return parts.every(({ line }) => hasAmount(line)) ? parts : null;
};

const oneFed = (told: Told): Readonly<Record<string, unknown>> & { readonly amount: string | null } => {
  const [group = null] = namedGroups(told);
  return { group, amount: readMass(told).amount, ration: rationIn(told) };
};

/** The measure of the first amount goes for a bare one behind it: `3 scoops whites 1 reds`. */
const inSameMeasure = (told: Told, part: Told): Told => {
  const isBare =
    part.line.spans.every(({ kind }) => kind !== 'quantity') && readMass(part).assumed.length > 0;
  const [first] = spansOf(told.line.spans, 'number');
  const measure = first === undefined ? undefined : told.line.tokens[first.to];
  const [own] = spansOf(part.line.spans, 'number');
  if (!isBare || measure === undefined || own === undefined) return part;
  const isMeasure = ['scoop', 'bucket', ...Object.keys(told.about.measures)].includes(measure.stem);
  if (!isMeasure) return part;
  const tokens = [...part.line.tokens.slice(0, own.to), measure, ...part.line.tokens.slice(own.to)];
  return {
    ...part,
    line: {
      tokens,
      spans: part.line.spans.map((span) =>
        span.from < own.to ? span : { ...span, from: span.from + 1, to: span.to + 1 },
      ),
    },
  };
};

export const buildFeed: Build = (told) => {
  const parts = partsByGroup(told)?.map((part) => inSameMeasure(told, part)) ?? null;
  if (parts !== null) {
    const [first, ...others] = parts.map(oneFed);
    if (first !== undefined && [first, ...others].every(({ amount }) => amount !== null))
      return {
        fields: known(first),
        missing: [],
        assumed: parts.flatMap((part) => readMass(part).assumed),
        also: others.map(known),
      };
  }
  const mass = readMass(told);
  const named = groupsFed(told);
  const all = told.about.groups.filter((group) => group.place !== 'gone').length;
  const group =
    named.length === 1 ? named[0] : named.length === 0 && told.carried.length === 1 ? told.carried[0] : null;
  // several but not all of them, or all with several amounts: it has to be asked which got how much
  const amounts = told.line.spans.filter(({ kind }) => kind === 'quantity').length;
  const unclear = named.length > 1 && (named.length < all || amounts > 1);
  const fields = { group: group ?? null, amount: mass.amount, ration: rationIn(told) };
  return {
    fields: known(fields),
    missing: [...lacking(fields, 'amount'), ...(unclear ? ['group'] : [])],
    assumed: mass.assumed,
  };
};
