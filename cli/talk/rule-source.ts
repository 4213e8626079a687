/** Rules and figures asked about: one by its name, by words, by its number in the last answer, or many as a list. */
import type { Figure, OwnFigure, Rule } from '../../engine/types.ts';
import { figuresOf } from '../say/reason.ts';
import { namedIn, sayAnswerSources } from '../say/rule-source.ts';
import { sayFigureList, sayRuleList } from '../say/rulebook-list.ts';
import { sayFigurePage, sayRulePage } from '../say/rulebook-page.ts';
import type { Speech } from '../say/speech.ts';
import type { Token } from '../say/tokens.ts';
import type { Reading } from '../understand/types.ts';
import { type Flock, momentOn, speechFor } from './flock.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { sayOnly } from './say-only.ts';
import { type Hit, numbersSaid, searchBook, tellingWords } from './search-book.ts';

/** More than this is no answer in a conversation; the commands list all of it. */
const mostListed = 24;
const mostOffered = 5;
/** A hit so much better than the next one is what was meant. */
const clearLead = 1.25;
/** Of the best score, what a hit must reach to be listed. */
const goodShare = 0.6;
/** What the last answer rests on is likelier meant than anything else. */
const ofAnswer = 4;

interface Found {
  readonly tokens: readonly Token[];
  readonly exit: number;
  readonly choices: readonly Reading[];
}

const found = (tokens: readonly Token[], exit: number = exits.answered): Found => ({
  tokens,
  exit,
  choices: [],
});

/** All that the keeper has set of figures, oldest first. */
export const ownFiguresOf = (flock: Flock): readonly OwnFigure[] =>
  flock.engine().state(momentOn(flock, flock.today)).ownFigures;

const pageOf = (flock: Flock, speech: Speech, { kind, id }: Pick<Hit, 'kind' | 'id'>): readonly Token[] => {
  const rule = kind === 'rule' ? flock.book.rules[id] : undefined;
  if (rule !== undefined) return sayRulePage(speech, rule);
  const figure = flock.book.figures[id];
  return figure === undefined ? [] : sayFigurePage(speech, figure, ownFiguresOf(flock));
};

/** The rule and the figures behind one numbered reason of the last answer. */
const ofReason = (flock: Flock, speech: Speech, words: string, memory: Memory): Found | null => {
  const n = /\b(?:rule|reason|number|no|figure|source|point)s?\.?\s*#?(\d{1,3})\b/i.exec(words)?.[1];
  const { answer } = memory;
  if (n === undefined || answer === null) return null;
  const reason = answer.parts.flatMap((part) => part.reasons).find((each) => each.n === Number(n));
  if (reason === undefined) return null;
  const ids = [...new Set(figuresOf(answer, reason).map(({ id }) => id))];
  return found([
    ...pageOf(flock, speech, { kind: 'rule', id: reason.rule }),
    ...ids.flatMap((id) => pageOf(flock, speech, { kind: 'figure', id })),
  ]);
};

/** Rules and figures that the last answer was made of. */
const behindAnswer = ({ answer }: Memory): ReadonlySet<string> =>
  new Set(
    answer === null
      ? []
      : [
          ...answer.parts.flatMap(({ rule, reasons }) => [rule ?? '', ...reasons.map((each) => each.rule)]),
          ...answer.workings.flatMap(({ figures }) => figures.map(({ id }) => id)),
        ],
  );

const describe = (flock: Flock, { kind, id }: Hit): string =>
  kind === 'rule'
    ? `the rule ${id}: ${flock.book.rules[id]?.whyRight ?? ''}`
    : `the figure ${id}: ${flock.book.figures[id]?.description ?? ''}`;

const offer = (flock: Flock, reading: Reading, hits: readonly Hit[]): Found => ({
  tokens: [
    { t: 'claim', text: 'Which do you mean?' },
    ...hits.map((hit, index): Token => ({ t: 'choice', n: index + 1, text: describe(flock, hit) })),
    { t: 'next', text: 'Say the number.' },
  ],
  exit: exits.notUnderstood,
  choices: hits.map(({ kind, id }) => ({ ...reading, slots: { [kind]: id } })),
});

const bySearch = (
  flock: Flock,
  speech: Speech,
  words: string,
  reading: Reading,
  memory: Memory,
): Found | null => {
  const behind = behindAnswer(memory);
  const hits = searchBook(flock.book, words, speech.system)
    .map((hit) => ({ ...hit, score: hit.score + (behind.has(hit.id) ? ofAnswer : 0) }))
    .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  const [best, next] = hits;
  if (best === undefined) return null;
  if (next === undefined || best.score >= next.score * clearLead) return found(pageOf(flock, speech, best));
  return offer(
    flock,
    reading,
    hits.filter(({ score }) => score * clearLead > best.score).slice(0, mostOffered),
  );
};

const shortened = (tokens: readonly Token[], command: string): readonly Token[] => {
  const lines = tokens.filter(({ t }) => t === 'detail').length;
  if (lines <= mostListed) return tokens;
  let left = mostListed;
  const kept = tokens.filter(({ t }) => (t === 'detail' ? left-- > 0 : left > 0));
  return [...kept, { t: 'next', text: `${lines - mostListed} more: penside ${command} lists them all.` }];
};

/** Those that fit well enough to be listed, by kind and id. */
const listedHits = (hits: readonly Hit[]): ReadonlySet<string> => {
  const least = (hits[0]?.score ?? 0) * goodShare;
  return new Set(hits.filter(({ score }) => score >= least).map(({ kind, id }) => `${kind}:${id}`));
};

/** Rules or figures that some words are about, all of them where there are no telling words; own ones alone where asked. */
export const listedRules = (
  flock: Flock,
  words: string,
  ownOnly: boolean,
): { readonly rules: readonly Rule[]; readonly figures: readonly Figure[] } => {
  const { book } = flock;
  const system = speechFor(flock).system;
  const isTold = tellingWords(book, words).length > 0 || numbersSaid(book, words, system).length > 0;
  const hits = isTold ? listedHits(searchBook(book, words, system)) : null;
  const set = new Set(ownFiguresOf(flock).map(({ figure }) => figure));
  return {
    rules: Object.values(book.rules).filter(
      ({ id, own }) => (hits?.has(`rule:${id}`) ?? true) && (!ownOnly || own !== undefined),
    ),
    figures: Object.values(book.figures).filter(
      ({ id, own }) => (hits?.has(`figure:${id}`) ?? true) && (!ownOnly || own !== undefined || set.has(id)),
    ),
  };
};

const asList = (flock: Flock, speech: Speech, words: string): Found | null => {
  const isOwn = /\b(my|our|own)\s+(own\s+)?(rules|figures)\b/i.test(words);
  const isRules = /\brules\b/i.test(words);
  if (!isRules && !/\bfigures\b/i.test(words)) return null;
  const { rules, figures } = listedRules(flock, words, isOwn);
  const tokens = isRules ? sayRuleList(speech, rules) : sayFigureList(speech, figures, ownFiguresOf(flock));
  const nothing = isOwn ? 'You have set none of your own.' : 'Nothing in the book is about that.';
  return tokens.length === 0
    ? found([{ t: 'claim', text: nothing }], exits.cannotSay)
    : found(shortened(tokens, isRules ? 'rules' : 'figures'));
};

const picked = (flock: Flock, speech: Speech, { slots }: Reading): Found | null => {
  for (const kind of ['rule', 'figure'] as const) {
    const id = slots[kind];
    if (typeof id === 'string') return found(pageOf(flock, speech, { kind, id }));
  }
  return null;
};

const byName = (flock: Flock, speech: Speech, words: string): Found | null => {
  const { rules, figures } = namedIn(flock.book, words);
  const tokens = [
    ...rules.flatMap(({ id }) => pageOf(flock, speech, { kind: 'rule', id })),
    ...figures.flatMap(({ id }) => pageOf(flock, speech, { kind: 'figure', id })),
  ];
  return tokens.length === 0 ? null : found(tokens);
};

const nothingToExplain = found(
  [
    { t: 'claim', text: 'There is no answer to explain yet.' },
    {
      t: 'next',
      text: 'Ask something first, such as "can they go out", then "says who"; or "show the rules about feed".',
    },
  ],
  exits.cannotSay,
);

/** Answers a question about rules, figures and their sources. */
export const answerRuleSource = (flock: Flock, words: string, reading: Reading, memory: Memory): Reply => {
  const speech = speechFor(flock);
  const { answer } = memory;
  const { tokens, exit, choices } =
    picked(flock, speech, reading) ??
    byName(flock, speech, words) ??
    ofReason(flock, speech, words, memory) ??
    asList(flock, speech, words) ??
    bySearch(flock, speech, words, reading, memory) ??
    (answer === null ? nothingToExplain : found(sayAnswerSources(speech, answer)));
  const offered = choices.map(({ slots }) => ({
    question: reading.topic,
    says: String(slots.rule ?? slots.figure),
  }));
  const reply = sayOnly({ words, reading, memory }, tokens, exit, {
    ...(exit === exits.cannotSay ? { verdict: 'cannot-say' } : {}),
    ...(choices.length > 0 ? { verdict: 'which', steps: [], choices: offered } : {}),
  });
  return { ...reply, memory: { ...memory, choices } };
};
