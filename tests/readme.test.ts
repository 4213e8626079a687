/** The README's answers are the transcripts' answers, so that the manual cannot drift from the program (renew with `vitest -u`). */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const root = new URL('../', import.meta.url);
const readme = new URL('README.md', root).pathname;

const transcript = (name: string): string =>
  readFileSync(new URL(`tests/conversations/${name}`, root), 'utf8');

/** The turn of a transcript in which this was said. */
const turnIn = (name: string, said: string): string => {
  const turns = transcript(name).split(/\n(?=> )/);
  const found = turns.find((turn) => turn.startsWith(`> ${said}\n`));
  if (found === undefined) throw new Error(`nobody says "${said}" in ${name}`);
  return found.trim();
};

const fenced = (text: string): string => `\`\`\`\n${text}\n\`\`\``;

const renew = (text: string): string =>
  text
    .replace(
      /(<!-- from (\S+): (.*?) -->)\n(?:```\n[\s\S]*?\n```\n)?/g,
      (_, mark: string, name: string, said: string) => `${mark}\n${fenced(turnIn(name, said))}\n`,
    )
    .replace(
      /(<!-- all of (\S+) -->)\n(?:```\n[\s\S]*?\n```\n)?/g,
      (_, mark: string, name: string) =>
        `${mark}\n${fenced(transcript(name).split('\n\n').slice(1).join('\n\n').trim())}\n`,
    );

test('the README shows what the program says', async () => {
  await expect(renew(readFileSync(readme, 'utf8'))).toMatchFileSnapshot(readme);
});
