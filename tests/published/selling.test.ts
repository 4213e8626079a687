/** What is told of selling: the federal sections that were read or are named from memory, the count, and who decides. */
import { describe, expect, test } from 'vitest';
import type { Sentence } from '../../engine/types.ts';
import { ask, flockOf, partOf, shipped } from '../helpers/flock-of.ts';

const keeper = (country: string | null) =>
  flockOf(
    ...(country === null ? [] : [{ kind: 'setting', on: '2026-01-01', what: 'country', value: country }]),
    { kind: 'arrive', on: '2026-05-02', group: 'whites', count: 70, bird: 'fast', hatched: '2026-05-01' },
    { kind: 'process', on: '2026-07-01', group: 'whites', count: 68, dressed: '300 lb' },
  );

const filled = ({ template, values }: Sentence): string =>
  template.replace(/\{([^}]+)\}/g, (_, name: string) => String(values[name]?.value));

const toldIn = async (country: string | null) => {
  const part = partOf(await ask(keeper(country), 'selling-rules', '2026-08-01'));
  return {
    ...part,
    told: Object.fromEntries(part.remarks.map(({ rule, says }) => [rule, filled(says)])),
    sources: Object.fromEntries(
      part.remarks.map(({ rule, source }) => [rule, shipped.sources[source]?.standing]),
    ),
  };
};

describe('in the United States', () => {
  // 21 U.S.C. 464(c)(1)(A), read: own raising, household, guests who do not pay and employees; no limit on the number.
  test('own use rests on the section that was read', async () => {
    const { told, sources } = await toldIn('the USA');
    expect(told['selling-rules/at-home']).toContain('21 U.S.C. 464(c)(1)(A)');
    expect(sources['selling-rules/at-home']).toBe('published');
    expect(shipped.sources['usc-464']).toMatchObject({ author: 'United States Code', standing: 'published' });
  });

  // FSIS guidance, revision 1, April 2006, read: 1,000 and 20,000; 9 CFR 381.10 is named from memory, and says so.
  test('both limits come from the guidance of 2006, with the count of the year', async () => {
    const { told, headline } = await toldIn('the USA');
    expect(told['selling-rules/by-the-thousand']).toContain('up to 1000 of your own raising');
    expect(told['selling-rules/by-the-thousand']).toContain('9 CFR 381.10 and the guidance of 2006');
    expect(told['selling-rules/by-the-thousand']).toContain('You are at 70: 68 processed and 2 to come');
    expect(headline?.values['birds-this-year']?.value).toBe(70);
    for (const figure of ['selling/small-limit', 'selling/large-limit'])
      expect(shipped.figures[figure]?.values[0]?.source).toBe('fsis-2006');
    expect(shipped.sources['cfr-381-10']?.standing).toBe('memory');
  });
});

test('elsewhere no law is claimed to be known', async () => {
  const { verdict, headline, told } = await toldIn('Ireland');
  expect([verdict, filled(headline ?? { template: '', values: {} })]).toEqual([
    'cannot-say',
    'I do not know the law of Ireland. Ask your local food or veterinary authority before you sell or give meat away.',
  ]);
  expect(told['selling-rules/by-the-thousand']).toBeUndefined();
});

test.each(['the USA', 'Ireland', null])(
  '%s: the answer always leaves it to an authority',
  async (country) => {
    const { cautions } = await toldIn(country);
    expect(cautions.map(({ says }) => says.template)).toContain(
      'This is not legal advice. Your state or local authority decides; ask it before you sell or give away meat.',
    );
  },
);
