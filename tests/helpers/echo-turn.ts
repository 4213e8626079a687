/** Turns for tests of the chat: words come back, with one token of each kind on request. */
import type { Turn } from '../../cli/chat/conversation.ts';
import type { Token } from '../../cli/say/tokens.ts';

/** One answer with every kind of token; the figures in it are made up for the layout and claim nothing. */
export const everyToken: readonly Token[] = [
  { t: 'claim', text: 'Not tonight: keep the reds in the brooder.' },
  {
    t: 'reason',
    n: 1,
    text: 'the low tonight is 38 °F and the least for their age is 50 °F',
    outcome: 'failed',
  },
  {
    t: 'reason',
    n: 2,
    text: 'they are feathered on the back',
    outcome: 'held',
    note: 'common practice, no source',
  },
  { t: 'reason', n: 3, text: 'rain is under a tenth of an inch', outcome: 'not known' },
  { t: 'figure', text: 'least night low at four weeks, 50 °F, common practice, no source' },
  { t: 'unknown', text: 'rain tonight', tell: 'rain tonight 0.2 in' },
  { t: 'caution', text: 'a lamp near straw can start a fire' },
  { t: 'next', text: 'It would turn to yes on 2 December.' },
  { t: 'blank' },
  { t: 'heading', text: 'Today' },
  { t: 'step', id: 'move-pen', text: 'move the pen one length', at: 'morning', done: true },
  { t: 'step', id: 'fill-water', text: 'fill the water', at: 'evening', done: false },
  { t: 'picture', drawings: [['lb  _/', '   /']], says: 'Weight rises from week to week.' },
  { t: 'detail', text: 'taking tonight as 25 November' },
  { t: 'choice', n: 1, text: 'the water they drink' },
  { t: 'choice', n: 2, text: 'the water you carry' },
];

/** Says `heard <words>`; `everything` brings each kind of token, `bye` leaves, and all that was heard is kept. */
export const makeEchoTurn = (): { readonly turn: Turn; readonly heard: readonly string[] } => {
  const heard: string[] = [];
  const turn: Turn = async (words) => {
    heard.push(words);
    if (words === 'everything') return { tokens: everyToken };
    return { tokens: [{ t: 'claim', text: `heard ${words}` }], leave: words === 'bye' };
  };
  return { turn, heard };
};
