/** The rules of the house, read from the source itself: who may import whom, what may be touched where, and how files look. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { filesBelow, type Import, root, type SourceFile, sourceFiles } from './helpers/source-files.ts';

/** What each part may import besides itself; `type` stands for what must be gone when the program runs. */
interface Neighbours {
  readonly value?: readonly string[];
  readonly type?: readonly string[];
}

const words = ['engine/types.ts', 'engine/problem.ts', 'engine/day.ts'];

/** The longest path that a file begins with is the one that counts for it. */
const allowed: Readonly<Record<string, Neighbours>> = {
  'engine/types.ts': { type: ['engine/types/'] },
  'engine/types/': { type: ['engine/day.ts', 'engine/problem.ts'] },
  'engine/problem.ts': {},
  'engine/day.ts': {},
  'engine/units.ts': { type: ['engine/types.ts'] },
  'engine/operators.ts': {},
  'engine/ledger/': {
    value: ['engine/day.ts', 'engine/units.ts', 'fastest-levenshtein', 'node:'],
    type: words,
  },
  'engine/rulebook/': {
    value: [
      'engine/day.ts',
      'engine/units.ts',
      'engine/operators.ts',
      'fastest-levenshtein',
      'yaml',
      'zod',
      'node:',
    ],
    type: words,
  },
  'engine/facts/': {
    value: [
      'engine/day.ts',
      'engine/units.ts',
      'engine/rulebook/figures.ts',
      'engine/rulebook/own-figures.ts',
    ],
    type: words,
  },
  'engine/facts/sums/': { value: ['big.js'] },
  'engine/reason/': { value: ['engine/operators.ts', 'engine/rulebook/ranking.ts'], type: words },
  'engine/reason/run.ts': { value: ['engine/operators.ts', 'json-rules-engine'], type: words },
  'engine/explain/': { type: [...words, 'engine/reason/'] },
  'engine/ask/': {
    value: [
      'engine/day.ts',
      'engine/units.ts',
      'engine/facts/memory.ts',
      'engine/facts/workings.ts',
      'engine/reason/',
      'engine/explain/',
      'engine/rulebook/conditions.ts',
      'engine/rulebook/ranking.ts',
      'engine/rulebook/figures.ts',
      'engine/rulebook/own.ts',
    ],
    type: [
      ...words,
      'engine/facts/define.ts',
      'engine/facts/views.ts',
      'engine/rulebook/checks/index.ts',
      'engine/rulebook/document.ts',
    ],
  },
  'engine/audit/': {
    value: ['engine/day.ts', 'engine/rulebook/figures.ts', 'engine/ledger/append/', 'node:'],
    type: [...words, 'engine/ask/ask.ts'],
  },
  'engine/index.ts': { value: ['engine/'] },
  'cli/say/': {
    value: [
      'engine/day.ts',
      'engine/units.ts',
      'engine/index.ts',
      'engine/explain/drill.ts',
      'engine/rulebook/cells.ts',
      'engine/rulebook/conditions.ts',
      'get-east-asian-width',
      'node:util',
    ],
    type: words,
  },
  'cli/picture/': { value: ['engine/day.ts', 'cli/say/'], type: words },
  'cli/understand/': { value: ['engine/day.ts', 'fastest-levenshtein'], type: words },
  'cli/talk/': {
    value: [
      'engine/index.ts',
      'engine/explain/drill.ts',
      'engine/rulebook/cells.ts',
      'engine/rulebook/conditions.ts',
      'engine/day.ts',
      'engine/units.ts',
      'cli/say/',
      'cli/picture/',
      'cli/understand/',
      'cli/demo/',
      'cli/weather/choose.ts',
      'cli/weather/place.ts',
      'cli/weather/services.ts',
    ],
    type: [...words, 'cli/weather/fetch-forecast.ts', 'cli/weather/kept.ts', 'cli/weather/provider.ts'],
  },
  'cli/weather/': { value: ['engine/day.ts', 'zod/mini', 'node:timers/promises'] },
  'cli/demo/': { value: ['engine/day.ts'] },
  'cli/chat/': { value: ['cli/say/', 'react', 'ink', 'string-width', 'node:readline'] },
  'cli/commands/': {
    value: [
      'engine/day.ts',
      'cli/say/',
      'cli/talk/',
      'cli/demo/',
      'cli/rulebook.ts',
      'cli/surroundings.ts',
      'cli/take-copy.ts',
      'node:',
    ],
    type: words,
  },
  'cli/commands/forecast-door.ts': {
    value: ['cli/surroundings.ts', 'cli/weather/fetch-forecast.ts', 'node:path'],
    type: ['cli/talk/flock.ts'],
  },
  'cli/commands/heard.ts': {
    value: ['cli/commands/', 'cli/say/', 'cli/talk/'],
    type: ['cli/understand/types.ts'],
  },
  'cli/commands/chat.ts': {
    value: [
      'node:timers/promises',
      'cli/chat/start.tsx',
      'cli/surroundings.ts',
      'cli/talk/',
      'cli/commands/',
    ],
    type: ['cli/chat/', 'cli/say/', 'cli/talk/', 'cli/surroundings.ts'],
  },
  'cli/parts.ts': {},
  'cli/shipped-book.ts': { value: ['cli/parts.ts'], type: words },
  'cli/kept-code.ts': { value: ['node:'] },
  'cli/start-program.ts': { value: ['node:'], type: ['cli/kept-code.ts'] },
  'cli/launch.ts': { value: ['cli/folders.ts', 'cli/kept-code.ts', 'cli/start-program.ts', 'node:'] },
  'cli/rulebook.ts': {
    value: ['engine/index.ts', 'cli/shipped-book.ts', 'cli/understand/', 'node:fs'],
    type: words,
  },
  'cli/folders.ts': { value: ['node:path'] },
  'cli/take-copy.ts': {
    value: ['engine/index.ts', 'cli/surroundings.ts', 'node:'],
    type: ['engine/day.ts'],
  },
  'cli/surroundings.ts': { value: ['engine/day.ts', 'cli/folders.ts', 'node:'] },
  'cli/main.ts': {
    value: [
      'cli/commands/',
      'cli/surroundings.ts',
      'cli/say/ascii.ts',
      'cli/say/clean.ts',
      'cli/chat/chat-way.ts',
      'cli/chat/while-waiting.ts',
      'node:util',
    ],
  },
  'cli/build/rulebook/': { value: ['cli/say/'], type: words },
  'cli/build/': {
    value: [
      'engine/index.ts',
      'engine/rulebook/load.ts',
      'cli/say/problem.ts',
      'cli/shipped-book.ts',
      'cli/understand/',
      'esbuild',
      'node:',
    ],
    type: words,
  },
};

const partOf = (path: string): string =>
  Object.keys(allowed)
    .filter((part) => path.startsWith(part))
    .sort((a, b) => b.length - a.length)[0] ?? '';

const fits = (of: string, list: readonly string[]): boolean =>
  list.some((each) => of === each || (/[/:]$/.test(each) && of.startsWith(each)));

const isNeighbour = (path: string, { of, isType }: Import): boolean => {
  const part = partOf(path);
  const { value = [], type = [] } = allowed[part] ?? {};
  const isOwn = part.endsWith('/') && of.startsWith(part);
  return isOwn || fits(of, value) || (isType && fits(of, type));
};

/** Files whose code, remarks left out, has something in it that only some may have. */
const having = (pattern: RegExp, files: readonly SourceFile[] = sourceFiles): string[] =>
  files.filter(({ code }) => pattern.test(code)).map(({ path }) => path);

const importing = (pattern: RegExp): string[] =>
  sourceFiles.filter(({ imports }) => imports.some(({ of }) => pattern.test(of))).map(({ path }) => path);

describe('imports', () => {
  test.each(sourceFiles.map((file) => [file.path, file] as const))(
    'of %s point the right way',
    (path, file) => {
      expect(partOf(path)).not.toBe('');
      expect(file.imports.filter((each) => !isNeighbour(path, each))).toEqual([]);
    },
  );

  test('have no part without a file, and no way that nobody goes', () => {
    const unused = Object.entries(allowed).flatMap(([part, { value = [], type = [] }]) => {
      const imports = sourceFiles.filter(({ path }) => partOf(path) === part).flatMap((file) => file.imports);
      return [
        ...(sourceFiles.some(({ path }) => partOf(path) === part) ? [] : [part]),
        ...value
          .filter((each) => !imports.some(({ of }) => fits(of, [each])))
          .map((each) => `${part} ${each}`),
        ...type
          .filter((each) => !words.includes(each) && !imports.some(({ of }) => fits(of, [each])))
          .map((each) => `${part} type ${each}`),
      ];
    });
    expect(unused).toEqual([]);
  });

  test('end in .ts or .tsx, or name a package', () => {
    const odd = sourceFiles.flatMap(({ path, imports }) =>
      imports
        .filter(({ of }) => /^(engine|cli|\.)/.test(of) && !/\.tsx?$/.test(of))
        .map(({ of }) => `${path}: ${of}`),
    );
    expect(odd).toEqual([]);
  });

  test('never bring drawing into anything but the chat, which only its command opens', () => {
    expect(importing(/^(react|ink)$/).filter((path) => !path.startsWith('cli/chat/'))).toEqual([]);
    expect(importing(/^cli\/chat\/start\.tsx$/)).toEqual(['cli/commands/chat.ts']);
    expect(importing(/^json-rules-engine$/)).toEqual(['engine/reason/run.ts']);
    expect(importing(/^(yaml|zod)$/).filter((path) => !path.startsWith('engine/rulebook/'))).toEqual([]);
  });
});

describe('what is outside the program', () => {
  test('files are read and written in few places', () => {
    expect(importing(/^node:fs/)).toEqual([
      'cli/build/build.ts',
      'cli/build/bundle.ts',
      'cli/build/learned.ts',
      'cli/build/licences.ts',
      'cli/build/plugins.ts',
      'cli/build/voices.ts',
      'cli/kept-code.ts',
      'cli/rulebook.ts',
      'cli/start-program.ts',
      'cli/surroundings.ts',
      'cli/take-copy.ts',
      'engine/audit/advice-file.ts',
      'engine/ledger/append/append.ts',
      'engine/ledger/append/lock.ts',
      'engine/ledger/append/owner.ts',
      'engine/ledger/append/write-lines.ts',
      'engine/ledger/read.ts',
      'engine/rulebook/load.ts',
    ]);
  });

  test('the clock is looked at in one place, and chance is left to itself', () => {
    expect(having(/new Date\(\)|Date\.now|performance\.now/)).toEqual(['cli/surroundings.ts']);
    expect(having(/Math\.random/)).toEqual([]);
  });

  test('the process is handed on by the program, and looked at by those who must', () => {
    // The chat's drawing library reads the live environment; whoever holds the file's lock is a process.
    expect(having(/\bprocess\.(?!ts')/)).toEqual([
      'cli/build/build.ts',
      'cli/build/bundle.ts',
      'cli/commands/chat.ts',
      'cli/launch.ts',
      'cli/main.ts',
      'cli/surroundings.ts',
      'engine/ledger/append/owner.ts',
    ]);
    expect(having(/\bhomedir\(/)).toEqual(['cli/launch.ts', 'cli/surroundings.ts']);
    expect(having(/\buserInfo\(/)).toEqual(['cli/surroundings.ts']);
    expect(having(/\bconsole\.|process\.exit\(/)).toEqual([]);
  });

  test('the network is used through one function, which only what fetches forecasts is handed', () => {
    expect(importing(/^(node:)?(https?|net|dgram|tls|dns|child_process|worker_threads)$/)).toEqual([]);
    expect(having(/\bfetch\(/)).toEqual(['cli/surroundings.ts']);
    expect(having(/\baskNetwork\b/)).toEqual(['cli/commands/forecast-door.ts', 'cli/surroundings.ts']);
    expect(having(/WebSocket|XMLHttpRequest/)).toEqual([]);
    // Hosts are named in one place.
    expect(having(/https:\/\/api\./)).toEqual(['cli/weather/services.ts']);
  });
});

describe('every file', () => {
  test.each(sourceFiles.map((file) => [file.path, file] as const))(
    '%s keeps the house rules',
    (path, { text, code }) => {
      // Neither texts nor patterns are code.
      const bare = code.replace(/'[^'\n]*'|`[^`]*`|\/[^/\n]+\/[a-z]*/g, '');
      const [header = ''] = text.replace(/^#!.*\n/, '').split('\n');
      const lines = text.split('\n').length - 1;
      expect({
        name: /^[a-z0-9]+(-[a-z0-9]+)*\.tsx?$/.test(path.split('/').at(-1) ?? ''),
        header: /^\/\*\*/.test(header),
        short: lines <= 250,
        namedExports: !/export default/.test(bare),
        noAny: !/(:|\bas|<)\s*any\b(?!\s*:)|\bany\[\]/.test(bare),
        noNonNull: !/[\w)\]]!(?=[.,;)\][])/.test(bare),
        noState:
          !/^(export )?(let|var) |^(export )?const \w+(: [^=]+)? = (new (Map|Set|WeakMap)\(\)|\[\]|\{\});/m.test(
            code,
          ),
      }).toEqual({
        name: true,
        header: true,
        short: true,
        namedExports: true,
        noAny: true,
        noNonNull: true,
        noState: true,
      });
    },
  );
});

describe('the tree', () => {
  const texts = filesBelow(['engine', 'cli', 'rules', 'tests'], /\.(tsx?|ya?ml|txt|md|json)$/);

  test('has no unfinished business and no word that belongs elsewhere', () => {
    // In two halves, so that this file does not find itself.
    const marks = new RegExp(`\\b(${['TO' + 'DO', 'FIX' + 'ME', 'X' + 'XX', 'HA' + 'CK'].join('|')})\\b`);
    const strange = new RegExp(
      `\\b(${['se' + 'ed', 'se' + 'eded', 'ses' + 'sion', 'LL' + 'M', 'G' + 'PT'].join('|')}s?)\\b`,
    );
    const found = [
      ...texts,
      'README.md',
      'DEVELOPERS.md',
      'CHANGELOG.md',
      'RULEBOOK.md',
      'package.json',
    ].filter((path) => {
      // The one option of the property-testing library that has such a name.
      if (path === 'tests/helpers/same-draws.ts') return false;
      const text = readFileSync(`${root}${path}`, 'utf8');
      return marks.test(text) || strange.test(text);
    });
    expect(found).toEqual([]);
  });

  test('has no drawer for odds and ends outside of the tests', () => {
    const drawers = /(^|\/)(utils?|common|helpers?|misc|shared|lib|src)(\/|\.)/;
    expect(texts.filter((path) => drawers.test(path) && !path.startsWith('tests/helpers/'))).toEqual([]);
    expect(having(/\b(class|function|const|interface)\s+\w*(Manager|Service|Helper|Util)s?\b/)).toEqual([]);
  });

  test('keeps knowledge as data', () => {
    expect(filesBelow(['rules'], /(?<!\.yaml|\.jsonl)$/)).toEqual([]);
  });

  test('depends on exact versions', () => {
    const { dependencies = {}, devDependencies = {} } = JSON.parse(
      readFileSync(`${root}package.json`, 'utf8'),
    );
    const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
      ([, version]) => !/^\d+\.\d+\.\d+$/.test(String(version)),
    );
    expect(loose).toEqual([]);
  });

  test('skips no test and runs none alone', () => {
    const cut = new RegExp(
      `\\b(test|it|describe)\\.(${['sk' + 'ip', 'on' + 'ly', 'to' + 'do'].join('|')})\\b`,
    );
    const files = filesBelow(['tests'], /\.test\.tsx?$/);
    expect(files.filter((path) => cut.test(readFileSync(`${root}${path}`, 'utf8')))).toEqual([]);
  });
});
