/** The program: reads the command line, runs what it names, writes what comes back, and is the only one to exit. */
import { parseArgs } from 'node:util';
import { type ChatWay, chatWay } from './chat/chat-way.ts';
import { stillWorking, whileWaiting } from './chat/while-waiting.ts';
import type { Command, Outcome } from './commands/command.ts';
import { toAscii } from './say/ascii.ts';
import { clean } from './say/clean.ts';
import type { Surroundings } from './surroundings.ts';
import { lookAround } from './surroundings.ts';

const shared = ['json', 'file', 'on', 'as-of', 'group', 'help'];

/** A number below zero, such as degrees west, is no option: it gets the true sign of minus, which no option begins with. */
const withMinus = (args: readonly string[]): string[] =>
  args.map((each) => (/^-\d+(\.\d+)?,?$/.test(each) ? each.replace('-', '−') : each));

const parse = (args: readonly string[], command: Command | null) => {
  const options = Object.fromEntries([
    ...(command === null
      ? shared.filter((name) => name !== 'json' && name !== 'help').map((name) => [name, { type: 'string' }])
      : command.options.map(({ name, takes }) => [name, { type: takes === null ? 'boolean' : 'string' }])),
    ...(command === null ? [['json', { type: 'boolean' }]] : []),
    ['help', { type: 'boolean' }],
    ...(command === null ? [['version', { type: 'boolean' }]] : []),
  ]) as Record<string, { type: 'string' | 'boolean' }>;
  return parseArgs({ args: withMinus(args), options, allowPositionals: true, strict: true });
};

/** A calendar ends its rows by CR and LF, so a CR at the very end is none to clean away. */
const cleanRow = (row: string): string => (row.endsWith('\r') ? `${clean(row.slice(0, -1))}\r` : clean(row));

/** Rows as they go out. Most are clean already; what a command repeats of its arguments and paths is made so here. */
const asText = (lines: readonly string[], isAscii: boolean): string => {
  const text = lines.map((line) => `${line.split('\n').map(cleanRow).join('\n')}\n`).join('');
  return isAscii ? toAscii(text) : text;
};

const chat = async (
  given: Parameters<typeof import('./commands/chat.ts').openChat>[0],
  around: Surroundings,
  way: ChatWay,
): Promise<Outcome> => {
  const { openChat } = await import('./commands/chat.ts');
  return openChat(given, around, way);
};

/** Takes back the row that the cursor is on. */
const eraseRow = '\r\x1b[K';

/** Runs what answers by itself; on a terminal it is said to be going on where that takes long, and no more once it is done. */
const answered = (
  { stderr, env, isAscii }: Surroundings,
  on: string,
  work: () => Promise<Outcome>,
): Promise<Outcome> => {
  if (!stderr.isTTY) return work();
  const says = clean(stillWorking(on));
  // Where each row is written once, as for a screen reader, none is taken back.
  const stays = chatWay({ isTTY: true }, stderr, env) !== 'drawn';
  // A full row would make some terminals begin another, which is then not taken back.
  const row = stays ? `${says}\n` : says.slice(0, Math.max(1, stderr.columns - 1));
  return whileWaiting(() => {
    stderr.write(isAscii ? toAscii(row) : row);
    return () => {
      if (!stays) stderr.write(eraseRow);
    };
  }, work);
};

const run = async (around: Surroundings): Promise<Outcome> => {
  const args = process.argv.slice(2);
  const { commands } = await import('./commands/index.ts');
  const command = commands.find((each) => each.name === args[0]) ?? null;
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(command === null ? args : args.slice(1), command);
  } catch (error) {
    const says = error instanceof Error ? error.message.replace(/\. To specify.*$/s, '') : String(error);
    return {
      out: [],
      err: [`${says}. penside${command === null ? '' : ` ${command.name}`} --help shows what there is.`],
      exit: 64,
    };
  }
  const given = {
    words: parsed.positionals,
    options: parsed.values as Record<string, string | boolean | undefined>,
  };
  if (given.options.help === true) {
    const { usage, usageOf } = await import('./commands/usage.ts');
    return { out: command === null ? usage() : usageOf(command), err: [], exit: 0 };
  }
  if (given.options.version === true)
    return { out: [process.env.npm_package_version ?? 'penside'], err: [], exit: 0 };
  if (command !== null) return answered(around, args.join(' '), () => command.run(given, around));
  if (given.words.length > 0) {
    const { converse, showReply } = await import('./commands/ask.ts');
    const words = given.words.join(' ');
    return answered(around, words, () => converse(given, around, [words], true, showReply(given, around)));
  }
  const way = chatWay(around.stdin, around.stdout, around.env);
  if (way !== null) return chat(given, around, way);
  const { converse, showReply } = await import('./commands/ask.ts');
  const words = 'what needs doing today';
  return answered(around, words, () => converse(given, around, [words], false, showReply(given, around)));
};

/** What cannot be written out any more: a reader that has seen enough is none of our concern, a full disk is. */
const minding = ({ stdout, stderr }: Surroundings): void => {
  stdout.on('error', ({ code }: NodeJS.ErrnoException) => {
    if (code === 'EPIPE') return;
    stderr.write(`The output could not be written (${code}). Make room for it, or send it elsewhere.\n`);
    process.exitCode = 1;
  });
};

const main = async (around: Surroundings): Promise<void> => {
  minding(around);
  const { out, err, exit } = await run(around);
  // Into a file goes all there is; a screen gets what it can show.
  if (err.length > 0) around.stderr.write(asText(err, around.isAscii && around.stderr.isTTY));
  around.stdout.write(asText(out, around.isAscii && around.stdout.isTTY));
  process.exitCode = exit;
};

void main(lookAround(process));
