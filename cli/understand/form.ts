/** Whether a line is asked or told, by the shape of the sentence alone. */
import type { Token } from './tokens.ts';

const leadIns = new Set(
  'ok so hey and but right well please hi hello um uh yo bro oh yeah hmm also then now anyway honestly quick question just sorry actually dude man ah say kindly'.split(' '),
);
const questionWords = new Set('what when how which why who whom whose where'.split(' '));
const auxiliaries = new Set(
  'is are am was were do does did can could should would will shall may might must has have had'.split(' '),
);
const subjects = new Set('i we you they it he she the my our this that these those there anyone anybody any someone all both'.split(' '));
const orders = new Set(
  'tell show give list state confirm calculate recalculate remind explain project advise compare describe estimate quote restate tabulate produce name work figure check'.split(' '),
);
const told = new Set(
  `lost fed gave found moved bought weighed put took had saw got came went did ate made sold brought cut killed died dropped picked dragged shifted noticed
  collected received spotted slid rolled hauled processed butchered slaughtered culled dispatched dumped tipped filled paid promised carried pulled turned was were hatched
  arrived counted averaged hit told withheld withdrew thawed reserved measured recorded logged observed purchased taken delivered transferred relocated advanced dispensed
  issued scooted switched caught attacked buried kept held set tossed poured topped scooped started stopped kicked`.split(/\s+/),
);
const recordOrders = new Set('log note record write remember put enter add jot mark debit exclude reserve correct save keep'.split(' '));
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

/** Above zero for a question, below for something told; about 2 either way is plain. */
export const weighForm = (tokens: readonly Token[]): number => {
  const words = tokens.filter((token) => !token.isMark).map((token) => token.word);
  const start = mainStart(words);
  const [first = '', second = ''] = words.slice(start);
  let weight = 0;
  const hasMark = tokens.some((token) => token.word === '?');
  if (hasMark) weight += 2;
  const inverted = auxiliaries.has(first) && second !== '' && !/ed$/.test(second);
  if (questionWords.has(first) || inverted) weight += 2;
  else if (orders.has(first) && !recordOrders.has(first)) weight += 1.5;
  const inner = words.some(
    (word, n) =>
      n > start &&
      ((questionWords.has(word) && word !== 'which' && word !== 'when' && word !== 'who' && word !== 'where') ||
        (auxiliaries.has(word) && subjects.has(words[n + 1] ?? '') && !subjects.has(words[n - 1] ?? ''))),
  );
  if (inner) weight += 1;
  if (words.some((word, n) => word === 'how' && ['many', 'much', 'long', 'old', 'far', 'big', 'heavy', 'soon'].includes(words[n + 1] ?? '')))
    weight += 1;
  const joined = words.join(' ');
  if (wondering.some((phrase) => joined.includes(phrase))) weight += 1.5;
  if (weight > 0) return Math.min(weight, 3);
  if (recordOrders.has(first)) return -2;
  const early = words.slice(start, start + 6);
  if (early.some((word) => told.has(word) || (/[a-z]{2}ed$/.test(word) && word !== 'need' && word !== 'feed' && word !== 'bed'))) weight -= 1.5;
  if (tokens.some((token) => token.word === '!')) weight -= 0.3;
  return weight - 0.5;
};
