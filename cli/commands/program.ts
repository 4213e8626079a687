/** The whole program as it is told of in its help, its manual page and the completions: what is not one command's own. */
import { exits } from '../talk/reply.ts';
import type { Option } from './command.ts';
import * as options from './options.ts';

interface Told {
  readonly name: string;
  readonly says: string;
}

export const inOneLine = 'plain-word answers for a household raising meat chickens on grass';

/** Ways to start it that are no command. */
export const forms: readonly { readonly usage: string; readonly says: string }[] = [
  { usage: 'penside', says: "chat, or without a terminal today's round" },
  {
    usage: 'penside "<question or record>"',
    says: 'answer a question; write a record once it is complete',
  },
];

export const help: Option = { name: 'help', takes: null, says: 'this text' };

/** Options that every way of starting it takes which is no command. */
export const freeOptions: readonly Option[] = [
  options.json,
  options.group,
  options.on,
  options.asOf,
  options.file,
  help,
  { name: 'version', takes: null, says: 'which version this is' },
];

/** What each exit code means; of several lines answered, the highest counts. */
export const exitCodes: readonly { readonly code: number; readonly says: string }[] = [
  { code: exits.answered, says: 'answered, recorded, or nothing wrong' },
  { code: exits.problems, says: 'problems: in the file or the rules, or nothing could be written' },
  { code: exits.notUnderstood, says: 'not understood, or more than one thing may be meant' },
  { code: exits.cannotSay, says: 'cannot say yet: something is missing' },
  { code: exits.wrongUse, says: 'wrong use of the command line' },
];

/** What is read of the environment; a test holds it against the source. */
export const environment: readonly Told[] = [
  { name: 'PENSIDE_FILE', says: 'the flock file, where --file names none' },
  {
    name: 'PENSIDE_READ_ONLY',
    says: 'set to anything but "no": nothing is written, as on a helper\'s machine',
  },
  { name: 'PENSIDE_BY', says: 'who is writing; else the name of the user' },
  { name: 'PENSIDE_LOG', says: '"no": answers given are not noted' },
  { name: 'PENSIDE_NOW', says: 'the day, or date and time with offset, to take as now' },
  { name: 'PENSIDE_PLAIN', says: 'set to anything but "no": a chat in whole sentences, for a screen reader' },
  { name: 'INK_SCREEN_READER', says: '"true": the same, under a name that other programs share' },
  { name: 'NO_COLOR', says: 'set to anything: no colours' },
  { name: 'COLUMNS', says: 'how wide text may be where there is no terminal; else 100 columns' },
  { name: 'TERM', says: '"dumb": a chat that only ever adds rows' },
  { name: 'LC_ALL', says: 'with LC_CTYPE and LANG: pictures keep to ASCII where none names UTF-8' },
  { name: 'LC_CTYPE', says: 'see LC_ALL' },
  { name: 'LANG', says: 'see LC_ALL' },
  { name: 'XDG_DATA_HOME', says: 'where the flock file is, and copies of it; else ~/.local/share' },
  { name: 'XDG_STATE_HOME', says: 'where the lines sent in the chat are; else ~/.local/state' },
  {
    name: 'XDG_CACHE_HOME',
    says: 'where the last forecast and compiled code of the program are; else ~/.cache',
  },
  { name: 'LOCALAPPDATA', says: 'on Windows, in place of the three before' },
];

/** Where things are on Linux; the other platforms have their own places for the same. */
export const files: readonly Told[] = [
  {
    name: '~/.local/share/penside/flock.jsonl',
    says: 'the flock file: one record a line, only ever added to',
  },
  { name: 'flock.rules/', says: 'beside it: rules and figures of your own' },
  { name: 'flock.advice.jsonl', says: 'beside it: the answers that were given' },
  { name: '~/.local/share/penside/copies/', says: 'where "penside backup" puts its copies' },
  { name: '~/.local/share/penside/rulebooks/', says: 'the rules by which answers were given' },
  { name: '~/.local/state/penside/history', says: 'the lines sent in the chat' },
  { name: '~/.cache/penside/forecast.json', says: 'the last forecast that was fetched' },
  {
    name: '~/.cache/penside/code/',
    says: 'compiled code of the program, by which it starts sooner; it may be taken away at any time',
  },
];

/** Options whose value is a path. */
export const takesPath = ({ takes }: Option): boolean => takes === 'FILE' || takes === 'PATH';
