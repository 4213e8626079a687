/** Whether a line is asked or told, by the shape of the sentence alone. */
import type { Line } from './find/all.ts';
import type { Span } from './spans.ts';

const leadIns = new Set(
  'ok so hey and but right well please hi hello um uh yo bro oh yeah hmm also then now anyway honestly quick question just sorry actually dude man ah say kindly'.split(
    ' ',
  ),
);
const questionWords = new Set('what when how which why who whom whose where'.split(' '));
const auxiliaries = new Set(
  'is are am was were do does did can could should would will shall may might must ought has have had'.split(
    ' ',
  ),
);
const subjects = new Set(
  'i we you they it he she the my our this that these those there anyone anybody any someone all both'.split(
    ' ',
  ),
);
const orders = new Set(
  'tell show give list state confirm calculate recalculate remind explain project advise compare describe estimate quote restate tabulate produce name work figure check'.split(
    ' ',
  ),
);
const told = new Set(
  `lost fed gave found moved bought weighed put took had saw got came went did ate made sold brought cut killed died dropped picked dragged shifted noticed
  collected received spotted slid rolled hauled processed butchered slaughtered culled dispatched dumped tipped filled paid promised carried pulled turned was were hatched
  arrived counted averaged hit told withheld withdrew thawed reserved measured recorded logged observed purchased taken delivered transferred relocated advanced dispensed
  issued scooted switched caught attacked buried kept held set tossed poured topped scooped started stopped kicked`.split(
    /\s+/,
  ),
);
const recordOrders = new Set(
  'log note record write remember put enter add jot mark debit exclude reserve correct save keep'.split(' '),
);
const wondering = [
  'wondering',
  'wonder',
  'any idea',
  'need to know',
  'want to know',
  'like to know',
  'not sure if',
  'not sure whether',
  'do not know',
  'curious',
  'no idea',
];

/** Where the sentence proper begins, after `ok so` and the like. */
const mainStart = (words: readonly string[]): number => {
  let at = 0;
  while (at < words.length - 1 && leadIns.has(words[at] ?? '')) at += 1;
  return at;
};

/** Nouns that a curt question opens with: `number of lamps`, `target weight`. */
const askedFor = new Set(
  'number total target daily required requirement requirements earliest latest amount quantity date age sample days rate estimate average any expected normal current'.split(
    ' ',
  ),
);
const largeAfterHow = new Set(
  'many much long old far big heavy soon often warm hot high hard fast'.split(' '),
);
/** A question word inside a line asks, except those that also join clauses (`the one which`, `when they came`). */
const joiners = new Set(['which', 'when', 'who', 'where']);
const notPast = new Set(['need', 'feed', 'bed', 'indeed', 'red', 'shed', 'weed']);

const weighAsked = (words: readonly string[], start: number): number => {
  const [first = '', second = ''] = words.slice(start);
  const isInverted = auxiliaries.has(first) && second !== '' && (!/ed$/.test(second) || notPast.has(second));
  const opens =
    questionWords.has(first) || isInverted ? 2 : orders.has(first) && !recordOrders.has(first) ? 1.5 : 0;
  const isInner = words.some((word, n) => {
    const asks = questionWords.has(word) && !joiners.has(word);
    const turns =
      auxiliaries.has(word) && subjects.has(words[n + 1] ?? '') && !subjects.has(words[n - 1] ?? '');
    return n > start && (asks || turns);
  });
  const isHowMany = words.some((word, n) => word === 'how' && largeAfterHow.has(words[n + 1] ?? ''));
  const joined = words.join(' ');
  const isWondering = wondering.some((phrase) => joined.includes(phrase));
  return opens + (isInner ? 1 : 0) + (isHowMany ? 1 : 0) + (isWondering ? 1.5 : 0);
};

/** Quantities and prices are told far oftener than asked. */
const telling = new Set(['quantity', 'size', 'money']);

const weighTold = (words: readonly string[], start: number, spans: readonly Span[]): number => {
  const isPast = words
    .slice(start, start + 6)
    .some((word) => told.has(word) || (/[a-z]{2}ed$/.test(word) && !notPast.has(word)));
  const isValued = words.some(
    (word, n) => ['is', 'are', 'was', 'were', 'at'].includes(word) && /^\d/.test(words[n + 1] ?? ''),
  );
  return (
    (isValued ? 1.3 : 0.5) + (isPast ? 1.5 : 0) + (spans.some((span) => telling.has(span.kind)) ? 0.8 : 0)
  );
};

/** Above zero for a question, below for something told; about 2 either way is plain. */
export const weighForm = ({ tokens, spans }: Line): number => {
  const words = tokens.filter((token) => !token.isMark).map((token) => token.word);
  const start = mainStart(words);
  const asked = weighAsked(words, start) + (tokens.some((token) => token.word === '?') ? 2 : 0);
  if (asked > 0) return Math.min(asked, 3);
  const first = words[start] ?? '';
  if (recordOrders.has(first)) return -2;
  return askedFor.has(first) ? 0.5 : -weighTold(words, start, spans);
};
