#!/usr/bin/env node
/** Starts the program: from code that an earlier run compiled where there is some, else from its text. */
import { homedir } from 'node:os';
import { dirname } from 'node:path';
import { isatty } from 'node:tty';
import { foldersOf, isReadOnlyIn } from './folders.ts';
import { keptCode } from './kept-code.ts';
import { startProgram } from './start-program.ts';

/** Of how many runs the code is gathered: after so many answers, little is left that none of them has used. */
const enough = { answer: 8, chat: 1 };

/** How long a chat stands before what it has compiled is kept, in milliseconds: drawn, and nothing of it put aside by Node yet. */
const settled = 3000;

const launch = (): void => {
  const { env, platform, version, arch, argv } = process;
  const way = argv.length > 2 || !isatty(0) ? 'answer' : 'chat';
  const home = homedir();
  const { cache } = foldersOf(env, platform, home);
  const keeping = { cache, within: [dirname(cache), home], user: process.geteuid?.() };
  // The build says which one it is.
  const kept = keptCode(keeping, process.env.PENSIDE_BUILD ?? '', `${way}-${version}-${arch}`);
  const program = startProgram(import.meta.dirname, kept);
  if (isReadOnlyIn(env)) return;
  let isKept = program.runs >= enough[way];
  const keep = (): void => {
    if (!isKept) program.keep();
    isKept = true;
  };
  if (way === 'chat' && !isKept) setTimeout(keep, settled).unref();
  process.on('exit', keep);
};

launch();
