/** Wordings for problems of rule files, published or the keeper's own. */
import { meant, say, text, type Wording } from './problem-wording.ts';

const unknownName =
  (what: string): Wording =>
  (data) =>
    say(`there is no ${what} called ${text(data, 'found')}.`, meant(data));

export const ruleWordings: Readonly<Record<string, Wording>> = {
  'not-yaml': (data) =>
    say(
      `this is not YAML (${text(data, 'says')}).`,
      'Look for a missing quote, colon or indent at the caret.',
    ),
  'empty-file': () => say('the file is empty.', 'Copy the template of its folder.'),
  'wrong-alias': (data) =>
    say(`*${text(data, 'found')} does not point at anything that can stand here.`, 'Write it out here.'),
  'too-deep': () => say('this is nested deeper than any rule needs to be.'),
  'unknown-key': (data) =>
    say(
      `${text(data, 'found')} is not a key that belongs here.`,
      meant(data) ?? (data.wants === undefined ? null : `Keys are ${text(data, 'wants')}.`),
    ),
  'missing-key': (data) => say(`${text(data, 'key')} is missing.`),
  'wrong-shape': (data) => say(`${text(data, 'key')} has the wrong shape: ${text(data, 'wants')}.`),
  'unknown-fact': unknownName('fact'),
  'unknown-figure': unknownName('figure'),
  'unknown-source': unknownName('source'),
  'unknown-unit': unknownName('unit'),
  'unknown-question': unknownName('question'),
  'unknown-rule': unknownName('rule'),
  'unknown-record': unknownName('entry kind'),
  'unknown-sign': unknownName('sign'),
  'unknown-sort': (data) =>
    say(
      `${text(data, 'found')} is no sort of value that can be supposed.`,
      meant(data) ?? `They are ${text(data, 'wants')}.`,
    ),
  'unknown-operator': (data) =>
    say(`${text(data, 'found')} is not a comparison.`, meant(data) ?? `They are ${text(data, 'wants')}.`),
  'wrong-sides': (data) =>
    say(
      `${text(data, 'operator')} does not go with what stands beside it.`,
      'Give exactly one of figure, other or value; none for known; a list for one-of and none-of.',
    ),
  'bare-number': (data) =>
    say(`${text(data, 'found')} is a bare number.`, 'Make it a figure with unit and source, and name that.'),
  'no-order': (data) =>
    say(`${text(data, 'fact')} has no more or less.`, 'Use is, is-not, one-of or none-of.'),
  'unit-clash': (data) =>
    say(`${text(data, 'fact')} is a measure of ${text(data, 'is')}, and this of ${text(data, 'against')}.`),
  'empty-list': (data) =>
    say(`an empty ${text(data, 'list')} would always hold.`, 'Give it a condition or take it out.'),
  'rule-without-case': (data) =>
    say(
      `there is no case in which the rule comes out as ${text(data, 'wants')}.`,
      'Add one: a rule is its own test.',
    ),
  'tie-without-rank': (data) =>
    say(
      `${text(data, 'rule')} and ${text(data, 'other')} can hold at once.`,
      'Let one of them outrank the other.',
    ),
  'outranks-itself': (data) => say(`${text(data, 'rule')} outranks itself by way of others.`),
  'question-without-rule': (data) => say(`no rule answers ${text(data, 'question')}.`),
  'words-without-fact': unknownName('fact'),
  'words-twice': (data) =>
    say(`${text(data, 'found')} has words in ${text(data, 'file')} already.`, 'Keep one of them.'),
  'fact-without-words': (data) =>
    say(`the fact ${text(data, 'fact')} has no words.`, 'Add it to a file in rules/facts.'),
  'wrong-table': (data) => say(`the figure wants ${text(data, 'wants')}.`),
  'chore-not-explained': (data) =>
    say(
      `the chore says nothing under ${text(data, 'wants')}.`,
      'It is part of the daily round: say how somebody new sees that it went right, and when to ring.',
    ),
  'unused-figure': (data) =>
    say(`no rule and no fact uses ${text(data, 'figure')}.`, 'Use it or take it out.'),
};

/** Wordings for what only a rule file of the keeper's can have wrong. */
export const ownWordings: Readonly<Record<string, Wording>> = {
  'wrong-place': (data) =>
    say(
      `${text(data, 'found')} is no place for a rule file.`,
      'Files are figures/<area>/<name>.yaml, decisions/<question>/<name>.yaml, sources/<name>.yaml and questions/<question>.yaml, in lower-case words joined by hyphens.',
    ),
  'file-refused': (data) => say(`the file was not read: ${text(data, 'why')}.`),
  'too-large': (data) =>
    say(`${text(data, 'found')} is larger than anything here can be.`, 'Write a smaller number.'),
  'other-axes': (data) =>
    say(
      `${text(data, 'figure')} is entered otherwise: ${text(data, 'wants')}.`,
      'Keep the axes of the published figure; only its numbers may change.',
    ),
  'other-measure': (data) => say(`${text(data, 'figure')} measures something else: ${text(data, 'wants')}.`),
  'source-taken': (data) =>
    say(`there is a source called ${text(data, 'found')} already.`, 'Give yours another name.'),
  'case-fails': (data) =>
    say(
      `in the case “${text(data, 'name')}” the rule comes out as ${text(data, 'found')}, not as ${text(data, 'expect')}.`,
      'Put the rule or the case right.',
    ),
};
