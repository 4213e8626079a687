/** The manual page: every command and option in it, in a roff that formatters take without complaint, and an environment that is the real one. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { commands } from '../../../cli/commands/index.ts';
import { manualPage } from '../../../cli/commands/manual-page.ts';
import { environment, exitCodes, freeOptions } from '../../../cli/commands/program.ts';
import { usage } from '../../../cli/commands/usage.ts';
import { exits } from '../../../cli/talk/reply.ts';
import { programPath } from '../../helpers/program.ts';
import { sourceFiles } from '../../helpers/source-files.ts';

const page = manualPage();
/** What is read once the roff is taken away. */
const read = page
  .filter((row) => !row.startsWith('.\\"'))
  .map((row) =>
    row
      .replace(/^\.S[HS] "?(.*?)"?$/, '$1')
      .replace(/\\f[BIR]/g, '')
      .replaceAll('\\(dq', '"')
      .replaceAll('\\-', '-')
      .replaceAll('\\&', ''),
  );

describe('the page', () => {
  test('has the sections of a manual page in their order', () => {
    expect(page.flatMap((row) => /^\.SH "?([A-Z ]+?)"?$/.exec(row)?.[1] ?? [])).toEqual([
      'NAME',
      'SYNOPSIS',
      'DESCRIPTION',
      'OPTIONS',
      'COMMANDS',
      'EXIT STATUS',
      'ENVIRONMENT',
      'FILES',
      'EXAMPLES',
    ]);
    expect(read[2]).toMatch(/^penside - [a-z].*[a-z]$/);
  });

  test('is ASCII, and no row of text can be taken for a request', () => {
    expect(page.filter((row) => /[^ -~]/.test(row))).toEqual([]);
    const requests = page.filter((row) => /^[.']/.test(row));
    expect(requests.filter((row) => !/^\.(TH|SH|SS|TP|br)\b/.test(row))).toEqual([]);
    expect(page.filter((row) => row === '')).toEqual([]);
  });

  test.each(commands)('tells of $name, and of every option of it', ({ usage: way, says, options }) => {
    const from = read.indexOf(way, read.indexOf('COMMANDS'));
    const part = read.slice(from, from + 2 + 3 * options.length);
    expect(part.slice(0, 2)).toEqual([way, `${says}.`]);
    const names = part.filter((row) => row.startsWith('--'));
    expect(names).toEqual(options.map(({ name, takes }) => `--${name}${takes === null ? '' : ` ${takes}`}`));
  });

  test('is taken by a formatter without complaint, where there is one', () => {
    const { error, stdout, stderr } = spawnSync('groff', ['-man', '-Tascii', '-ww', '-rLL=72n'], {
      input: `${page.join('\n')}\n`,
      encoding: 'utf8',
    });
    expect(error === undefined ? stderr : '').toBe('');
    // A formatter may set words apart to fill a row.
    const shown = error === undefined ? stdout.replace(/\s+/g, ' ') : read.join(' ');
    expect(shown).toContain('penside list [options] LIST');
  });
});

test('exit codes are in the help and in the page, each once, and they are those that are given', () => {
  expect(exitCodes.map(({ code }) => code)).toEqual(Object.values(exits));
  const status = page.slice(page.indexOf('.SH "EXIT STATUS"'), page.indexOf('.SH ENVIRONMENT'));
  expect(status.flatMap((row) => /^\\fB(\d+)\\fR$/.exec(row)?.[1] ?? [])).toEqual(
    exitCodes.map(({ code }) => String(code)),
  );
  expect(exitCodes.filter(({ says }) => !usage().some((row) => row.endsWith(says)))).toEqual([]);
});

describe('the environment', () => {
  // What a platform's Node or a test's own machinery sets is not read for the keeper's sake.
  const aside = ['CI', 'CONTINUOUS_INTEGRATION', 'NODE_ENV', 'DEV'];
  /** Written like one of the environment and put in by the build: none of them is left to be read. */
  const builtIn = ['PENSIDE_BUILD'];
  const found = new Set(
    sourceFiles
      .filter(({ path }) => path.startsWith('cli/') && !path.startsWith('cli/build/'))
      .flatMap(({ code }) => [
        ...[...code.matchAll(/\benv\??\.([A-Z][A-Z_]+)\b/g)].map(([, name = '']) => name),
        ...[
          ...code.matchAll(/\{ ([A-Z_, ]+) \}: (?:Env\b|Readonly<Record<string, string \| undefined>>)/g),
        ].flatMap(([, names = '']) => names.split(', ')),
      ]),
  );

  test('is told of as it is read', () => {
    const read = [...found].filter((name) => ![...aside, ...builtIn].includes(name)).sort();
    expect(read).toEqual(environment.map(({ name }) => name).sort());
  });

  test('has no part in what the build puts in', () => {
    const starts = readFileSync(programPath, 'utf8');
    expect(builtIn.filter((name) => !found.has(name) || starts.includes(name))).toEqual([]);
  });

  test('is in the help', () => {
    expect(environment.filter(({ says }) => !usage().some((row) => row.endsWith(says)))).toEqual([]);
  });
});

test('options that go with no command are in the help', () => {
  expect(freeOptions.filter(({ name }) => !usage().some((row) => row.includes(`--${name}`)))).toEqual([]);
});
