/** When to telephone and whom, and what the law says, held against the pages they were taken from. */
import { describe, expect, test } from 'vitest';
import { inForce } from '../../engine/rulebook/figures.ts';
import { rulebook } from '../helpers/rulebook-of.ts';

const { book } = rulebook();
const figureValue = (id: string): unknown => {
  const figure = book.figures[id];
  return figure === undefined ? undefined : inForce(figure, '2026-11-25').value;
};
const saysOf = (rule: string): string => book.rules[rule]?.says ?? '';

describe('bird flu', () => {
  // Michigan MDARD by way of Michigan State University Extension (read): two or more birds die within a 24-hour period.
  test('two dead within 24 hours, with others sick, are enough to call', () => {
    expect(figureValue('health/telephone-deaths')).toBe(2);
    expect(book.figures['health/telephone-deaths']?.unit).toBe('bird');
  });

  // Signs as listed by AVMA, Cornell Cooperative Extension and USDA APHIS (read).
  test.each([
    ['very low energy', 'lethargic'],
    ['low appetite', 'off-feed'],
    ['swollen head, eyelids, comb or wattles', 'swollen-head'],
    ['purple discoloration', 'blue-comb'],
    ['nasal discharge, cough or sneeze', 'sneezing'],
    ['incoordination', 'staggering'],
    ['twisted neck', 'twisted-neck'],
    ['diarrhea', 'diarrhea'],
    ['gasping', 'gasping'],
  ])('%s is on the list', (_, sign) => {
    expect(figureValue('health/reportable-sign')).toHaveProperty(sign, 1);
  });

  // Cornell Cooperative Extension and the City of Gloucester, Massachusetts, print the same number (read).
  test.each(['losses/whom-to-call', 'sickness/whom-to-call'])(
    '%s gives the number, and defers outside the US',
    (rule) => {
      expect(saysOf(rule)).toContain('1-866-536-7593');
      expect(saysOf(rule)).toContain('outside the United States ask your veterinary authority');
    },
  );
});

// Own judgement after veterinary texts, from memory: more than 3 % dead in 24 hours or 5 % in a week.
test('a vet hears of it above 3 % in a day or 5 % in a week', () => {
  expect(figureValue('health/vet-day-share')).toBe(3);
  expect(figureValue('health/vet-week-share')).toBe(5);
});

// From memory: coccidiosis is typically seen from 3 to 6 weeks; a pasted vent in the first days.
test('ages of the usual troubles', () => {
  expect([figureValue('health/gut-from'), figureValue('health/gut-until')]).toEqual([3, 6]);
  expect(figureValue('health/pasted-until')).toBe(10);
});

// UMaine bulletin 2214 (read): fast birds past 8 weeks go lame and die of heat and heart.
test('legs and hearts of fast birds give out past eight weeks', () => {
  expect(figureValue('health/legs-from')).toBe(8);
});

// Migratory Bird Treaty Act, 16 U.S.C. 703 to 712; eagles also 16 U.S.C. 668 (law text, quoted in pages that were read).
test('birds of prey are protected, and no advice harms them', () => {
  expect(figureValue('hunters/protected')).toEqual({ hawk: 1, owl: 1, eagle: 1, other: 0 });
  expect(saysOf('predators/birds-of-prey')).toContain('16 U.S.C. 703 to 712, eagles also 668');
});

// University of Missouri, signs and prevention of poultry predators, 2012 (read in part): who takes heads, limbs and chicks.
test.each([
  ['headless', ['raccoon', 'weasel', 'hawk', 'owl']],
  ['pulled-through-wire', ['raccoon']],
  ['chicks-missing', ['opossum', 'skunk', 'rat', 'cat', 'snake', 'hawk']],
  ['gone-without-trace', ['coyote', 'fox', 'hawk']],
])('%s speaks for those that the page names', (sign, hunters) => {
  for (const hunter of hunters) {
    expect(figureValue('hunters/evidence')).toHaveProperty([hunter, sign], expect.any(Number));
    expect(
      (figureValue('hunters/evidence') as Record<string, Record<string, number>>)[hunter]?.[sign],
    ).toBeGreaterThan(0);
  }
});

// US Centers for Disease Control and Prevention, Healthy Families and Flocks (read): under 5, over 65, weak immunity.
test('children, old people and the weak keep away', () => {
  expect(saysOf('sickness/wash-hands')).toContain(
    'Children under 5, people over 65 and anybody in weak health',
  );
});

test('nothing said of sickness or losses names a medicine or a dose', () => {
  const texts = Object.values(book.rules)
    .filter(({ question }) => ['sickness', 'losses', 'predators'].includes(question))
    .flatMap(({ says, chore }) => [says, chore?.says ?? '']);
  const drugs = /amprolium|corid|tylosin|penicillin|tetracycline|sulfa|antibiotic|vinegar|\bmg\b|per gallon/i;
  expect(texts.filter((text) => drugs.test(text))).toEqual([]);
});
