/** The three questions about feed and water, asked through the engine's door over a small ledger. */
import { describe, expect, test } from 'vitest';
import { openText } from '../../../engine/index.ts';
import type { Answer, Part } from '../../../engine/types.ts';
import { rulebook } from '../../helpers/rulebook-of.ts';

const { book } = rulebook();
const lb = 0.45359237;

const birds = [
  '{"kind":"arrive","on":"2026-05-02","group":"whites","count":49,"bird":"fast","hatched":"2026-05-01"}',
  '{"kind":"arrive","on":"2026-05-16","group":"reds","count":26,"bird":"slow","hatched":"2026-05-15"}',
];

const ask = (question: string, lines: readonly string[], until: string | null = null): Promise<Answer> =>
  openText(book, 'flock.jsonl', `${lines.join('\n')}\n`).ask({
    question,
    groups: [],
    moment: { on: '2026-06-07', asOf: null, lines: null },
    until,
    supposing: [],
  });

/** What a part comes to, without its wording. */
const gist = ({ group, verdict, rule, unknown, remarks, cautions, steps }: Part) => ({
  group,
  verdict,
  rule,
  unknown: unknown.map((each) => each.fact),
  remarks: remarks.map((each) => each.rule),
  cautions: cautions.map((each) => each.rule),
  steps: steps.map((each) => [each.at, each.rule, each.done]),
});

/** Results by id and group, rounded to a gram or a millilitre. */
const results = (answer: Answer) =>
  Object.fromEntries(
    answer.results.map((each) => [
      `${each.id} ${each.group ?? 'all'}`,
      typeof each.value === 'number' ? Math.round(each.value * 1000) / 1000 : each.value,
    ]),
  );

const everyDay = ['feed-amount/medicated-by-label', 'feed-amount/never-layer-feed'];

describe('feed-amount', () => {
  test('for the day, with the feeding ticked off that is on record', async () => {
    const fed = '{"kind":"feed","on":"2026-06-07","group":"whites","amount":"17 lb"}';
    const answer = await ask('feed-amount', [...birds, fed]);
    expect(answer.parts.map(gist)).toEqual([
      {
        group: 'whites',
        verdict: 'amount',
        rule: 'feed-amount/one-day',
        unknown: [],
        remarks: ['feed-amount/change-soon'],
        cautions: everyDay,
        steps: [['morning', 'feed-amount/daily-feed', true]],
      },
      {
        group: 'reds',
        verdict: 'amount',
        rule: 'feed-amount/one-day',
        unknown: [],
        remarks: [],
        cautions: everyDay,
        steps: [['morning', 'feed-amount/daily-feed', false]],
      },
    ]);
    const { 'feed whites': whites, 'feed reds': reds, 'feed all': all, ...rest } = results(answer);
    expect(Number(whites) + Number(reds)).toBeCloseTo(Number(all), 2);
    expect(rest).toEqual({
      'per-bird whites': Math.round((Number(whites) / 49) * 1000) / 1000,
      'per-bird reds': Math.round((Number(reds) / 26) * 1000) / 1000,
      'bags whites': 1,
      'bags reds': 1,
      'bags all': 2,
    });
  });

  test('over a change of ration names how much of each', async () => {
    const [whites] = (await ask('feed-amount', birds, '2026-06-20')).parts;
    expect(whites && gist(whites)).toMatchObject({
      rule: 'feed-amount/many-days',
      remarks: ['feed-amount/change-soon', 'feed-amount/finisher-part', 'feed-amount/grower-part'],
    });
  });
});

describe('feed-buy', () => {
  test('asks for the stock where none is on record, and names the whole need', async () => {
    const answer = await ask('feed-buy', birds, '2026-06-20');
    expect(answer.parts.map(gist)).toEqual([
      {
        group: null,
        verdict: 'cannot-say',
        rule: 'feed-buy/stock-not-told',
        unknown: ['feed-counted-from'],
        remarks: ['feed-buy/finisher-part', 'feed-buy/grower-part'],
        cautions: [],
        steps: [],
      },
    ]);
    expect(answer.parts[0]?.unless).toEqual([]);
    expect(answer.results).toEqual([]);
  });

  test('says what to buy, until when the stock lasts, and what it costs', async () => {
    const bought =
      '{"kind":"buy","on":"2026-06-07","what":"feed","bags":"2 bags","amount":"100 lb","price":"40.00"}';
    const answer = await ask('feed-buy', [...birds, bought], '2026-06-20');
    expect(answer.parts.map(gist)).toMatchObject([
      { verdict: 'amount', rule: 'feed-buy/buy-more', unknown: [], steps: [] },
    ]);
    const found = results(answer);
    expect(found).toEqual({
      'left all': Math.round(100 * lb * 1000) / 1000,
      'runs-out all': '2026-06-11',
      'bags all': 5,
      'cost all': 100,
    });
  });

  test('puts buying on the round when little is left', async () => {
    const told = '{"kind":"setting","on":"2026-06-07","what":"feed-in-stock","value":"30 lb"}';
    const [part] = (await ask('feed-buy', [...birds, told], '2026-06-20')).parts;
    expect(part && gist(part).steps).toEqual([['soon', 'feed-buy/buy-soon', false]]);
  });

  test('says so when nothing need be bought', async () => {
    const told = '{"kind":"setting","on":"2026-06-07","what":"feed-in-stock","value":"2000 lb"}';
    const [part] = (await ask('feed-buy', [...birds, told], '2026-06-20')).parts;
    expect(part && gist(part)).toMatchObject({ verdict: 'amount', rule: 'feed-buy/enough', steps: [] });
  });

  test('has nobody to buy for in an empty ledger', async () => {
    const [part] = (await ask('feed-buy', [])).parts;
    expect(part && gist(part)).toMatchObject({
      verdict: 'amount',
      rule: 'feed-buy/nobody-to-feed',
      unknown: [],
    });
  });
});

describe('water-amount', () => {
  test('on a hot day fills the drinkers at least twice and adds rounds at midday and evening', async () => {
    const place = [
      '{"kind":"weather","on":"2026-06-07","high":"90 F"}',
      '{"kind":"setting","on":"2026-06-07","what":"drinkers","value":"3"}',
      '{"kind":"setting","on":"2026-06-07","what":"drinker-size","value":"5 gal"}',
    ];
    const answer = await ask('water-amount', [...birds, ...place]);
    const wanted = {
      verdict: 'amount',
      rule: 'water-amount/by-age',
      unknown: [],
      remarks: ['water-amount/fills'],
      cautions: ['water-amount/hot-day'],
      steps: [
        ['morning', 'water-amount/morning-water', false],
        ['midday', 'water-amount/midday-water', false],
        ['evening', 'water-amount/evening-water', false],
      ],
    };
    expect(answer.parts.map(gist)).toEqual([
      { group: 'whites', ...wanted },
      { group: 'reds', ...wanted },
    ]);
    expect(results(answer)).toMatchObject({ 'fills whites': 2, 'fills reds': 2 });
  });
});
