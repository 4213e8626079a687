#!/usr/bin/env node
/** Starts the program: from code that the build compiled ahead where this Node can use it, else from its text. */
import { startProgram } from './start-program.ts';

startProgram(import.meta.dirname, process.argv.length > 2 ? 'answer' : 'chat');
