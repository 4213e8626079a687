/** The README's answers are the transcripts' answers, so that the manual cannot drift from the program (renew with `vitest -u`). */
import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { exitCodes } from '../cli/commands/program.ts';

const root = new URL('../', import.meta.url);
const readme = new URL('README.md', root).pathname;

const transcript = (name: string): string =>
  readFileSync(new URL(`tests/conversations/${name}`, root), 'utf8');

/** The turn of a transcript in which this was said; a change of the calendar behind it belongs to the next one. */
const turnIn = (name: string, said: string): string => {
  const turns = transcript(name).split(/\n(?=> |today: )/);
  const found = turns.find((turn) => turn.startsWith(`> ${said}\n`));
  if (found === undefined) throw new Error(`nobody says "${said}" in ${name}`);
  return found.trim();
};

const fenced = (text: string): string => `\`\`\`\n${text}\n\`\`\``;

const codesTable = (): string =>
  ['| code | means |', '|---|---|', ...exitCodes.map(({ code, says }) => `| ${code} | ${says} |`)].join('\n');

/** Turns are written as `<!-- from FILE: said | said -->`; what stands below a mark is made anew. */
const renew = (text: string): string =>
  text
    .replace(
      /(<!-- from (\S+): (.*?) -->)\n(?:```\n[\s\S]*?\n```\n)?/g,
      (_, mark: string, name: string, said: string) => {
        const turns = said.split(' | ').map((each) => turnIn(name, each));
        return `${mark}\n${fenced(turns.join('\n\n'))}\n`;
      },
    )
    .replace(/(<!-- exit codes -->)\n(?:\|.*\n)*/g, (_, mark: string) => `${mark}\n${codesTable()}\n`);

test('the README shows what the program says', async () => {
  await expect(renew(readFileSync(readme, 'utf8'))).toMatchFileSnapshot(readme);
});

test('the README is short enough to be read', () => {
  expect(readFileSync(readme, 'utf8').split('\n').length).toBeLessThanOrEqual(500);
});

test('the README leads to files that are there', () => {
  const links = [...readFileSync(readme, 'utf8').matchAll(/\]\((?!https?:)([^)#]+)/g)].map(
    ([, to = '']) => to,
  );
  expect(links.length).toBeGreaterThan(2);
  expect(links.filter((to) => !existsSync(new URL(to, root)))).toEqual([]);
});
