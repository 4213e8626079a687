/** RULEBOOK.md is what rules/ says, and every link in it leads somewhere (renew with `npm run rulebook`). */
import { expect, test } from 'vitest';
import { rulebookDocument } from '../cli/build/rulebook/document.ts';
import { rulebook } from './helpers/rulebook-of.ts';

const { book } = rulebook();
const text = rulebookDocument(book);

const places = [...text.matchAll(/<a id="([^"]+)"><\/a>/g)].map(([, id = '']) => id);
/** Headings are places as well, by their words. */
const headings = [...text.matchAll(/^## (.+)$/gm)].map(([, words = '']) =>
  words.toLowerCase().replaceAll(' ', '-'),
);

test('the document shows what the rules say', async () => {
  await expect(text).toMatchFileSnapshot(new URL('../RULEBOOK.md', import.meta.url).pathname);
});

test('every link leads to a place that is there', () => {
  const there = new Set([...places, ...headings]);
  const links = [...text.matchAll(/\]\(#([^)]+)\)/g)].map(([, to = '']) => to);
  expect(links.length).toBeGreaterThan(1000);
  expect(links.filter((to) => !there.has(to))).toEqual([]);
});

test('every rule, figure, fact and source is in it, once', () => {
  const wanted = (
    [
      ['r', book.rules],
      ['f', book.figures],
      ['v', book.facts],
      ['s', book.sources],
    ] as const
  ).flatMap(([kind, parts]) => Object.keys(parts).map((id) => `${kind}-${id.replaceAll('/', '-')}`));
  expect(places.filter((place) => !place.startsWith('q-')).sort()).toEqual(wanted.sort());
});

test('no name of the machine stands where a word should', () => {
  const unnamed = [...text.matchAll(/\[([a-z]+(?:-[a-z]+)+)\](?!\()/g)].map(([, name]) => name);
  expect([...new Set(unnamed)]).toEqual([]);
});
