import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { plain } from '../../../cli/say/plain.ts';
import type { Token } from '../../../cli/say/tokens.ts';
import { everyToken } from '../../helpers/echo-turn.ts';

test('with room, outcome words stand in a column', () => {
  expect(plain(everyToken, 90)).toEqual([
    'Not tonight: keep the reds in the brooder.',
    '1. the low tonight is 38 °F and the least for their age is 50 °F                 failed',
    '2. they are feathered on the back                                                held',
    '   common practice, no source',
    '3. rain is under a tenth of an inch                                              not known',
    'Figure: least night low at four weeks, 50 °F, common practice, no source',
    'Not known: rain tonight',
    '   To settle it, type: rain tonight 0.2 in',
    'Careful: a lamp near straw can start a fire',
    'It would turn to yes on 2 December.',
    '',
    'Today',
    'Morning: move the pen one length                                                 done',
    'Evening: fill the water                                                          to do',
    'lb  _/',
    '   /',
    'Weight rises from week to week.',
    'taking tonight as 25 November',
    '1. the water they drink',
    '2. the water you carry',
  ]);
});

const reason = (text: string): Token => ({ t: 'reason', n: 12, text, outcome: 'not known' });

test('without room, the outcome word follows the text, on a row of its own when it must', () => {
  expect(plain([reason('rain is light')], 40)).toEqual(['12. rain is light – not known']);
  expect(plain([reason('rain tonight is under a tenth of inch')], 40)).toEqual([
    '12. rain tonight is under a tenth of',
    '    inch – not known',
  ]);
  expect(plain([reason('rain tonight is under a tenth')], 40)).toEqual([
    '12. rain tonight is under a tenth',
    '    – not known',
  ]);
});

test('a long reason keeps its outcome at the end of its last row', () => {
  const text =
    'the low tonight is 38 °F and the least that birds of their age and feather can stand is 50 °F';
  expect(plain([{ t: 'reason', n: 1, text, outcome: 'failed' }], 95)).toEqual([
    '1. the low tonight is 38 °F and the least that birds of their age and feather can',
    '   stand is 50 °F                                                                     failed',
  ]);
});

test('rows stay readable in a window of any width', () => {
  const text = 'word '.repeat(60);
  const widths = [5, 60, 300, Number.POSITIVE_INFINITY].map((width) =>
    Math.max(...plain([{ t: 'claim', text }], width).map((row) => stringWidth(row))),
  );
  expect(widths).toEqual([19, 59, 99, 99]);
});

test('a picture that does not fit is said instead', () => {
  const picture: Token = { t: 'picture', drawings: [['x'.repeat(70)]], says: 'Weight rises.' };
  expect(plain([picture], 60)).toEqual(['Weight rises.']);
});

test('no token lets an escape through', () => {
  const evil = 'a\x1b[2Jb\u202ec';
  const tokens: readonly Token[] = [
    { t: 'claim', text: evil },
    { t: 'reason', n: 1, text: evil, outcome: null, note: evil },
    { t: 'unknown', text: evil, tell: evil },
    { t: 'step', id: 'x', text: evil, at: evil, done: false },
    { t: 'picture', drawings: [[evil]], says: evil },
  ];
  expect(plain(tokens, 60)).toEqual([
    'abc',
    '1. abc',
    '   abc',
    'Not known: abc',
    '   To settle it, type: abc',
    'Abc: abc – to do',
    'abc',
    'abc',
  ]);
});
