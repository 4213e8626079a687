/** Forecasts in the chat: switched on with a word on what leaves the machine, fetched, shown, outranked, taken back. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Token } from '../../../cli/say/tokens.ts';
import type { Flock } from '../../../cli/talk/flock.ts';
import { expectForecast } from '../../../cli/talk/forecast-news.ts';
import { openDemo, openOwn } from '../../../cli/talk/open-flock.ts';
import { nothingYet } from '../../../cli/talk/reply.ts';
import { turn } from '../../../cli/talk/turn.ts';

import type { Fetched, Wanted } from '../../../cli/weather/fetch-forecast.ts';
import type { ForecastDay } from '../../../cli/weather/provider.ts';
import { shipped } from '../../helpers/flock-of.ts';
import { lexiconFor } from '../../helpers/learned.ts';

const lexicon = lexiconFor(shipped);

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'penside-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const noon = '2026-05-14T12:00:00-04:00';
const cold: ForecastDay = {
  on: '2026-05-14',
  low: 3.4,
  high: 16,
  rain: 4,
  wind: 5,
  humidity: 0.6,
  isWhole: true,
};

/** A flock for which this comes of fetching, and all that was wanted. */
const flockWith = (fetched: Fetched, now = noon): { flock: Flock; wanted: Wanted[] } => {
  const wanted: Wanted[] = [];
  const flock = openOwn({
    book: shipped,
    lexicon,
    path: join(folder, 'flock.jsonl'),
    today: now.slice(0, 10),
    asOf: null,
    now,
    by: null,
    fetchForecast: (each) => {
      wanted.push(each);
      return Promise.resolve(fetched);
    },
  });
  return { flock, wanted };
};

const came = (days: readonly ForecastDay[] = [cold], fetched = noon): Fetched => ({
  forecast: { provider: 'us', place: { latitude: 44.1, longitude: -73.2 }, fetched, days },
  isKept: false,
});
const offline: Fetched = { failed: 'unreachable', provider: 'us' };

const textsOf = (tokens: readonly Token[]): readonly string[] =>
  tokens.flatMap((token) => ('text' in token ? [token.text] : []));

const say = async (flock: Flock, ...lines: readonly string[]): Promise<readonly string[]> => {
  let last: readonly string[] = [];
  for (const line of lines) {
    const reply = await turn(flock, line, nothingYet, { on: flock.today, group: null, write: true });
    last = textsOf(reply.tokens);
  }
  return last;
};
const lines = (): readonly string[] => readFileSync(join(folder, 'flock.jsonl'), 'utf8').trim().split('\n');
const on = ['our place is at 44.1 -73.2', 'forecast on'] as const;

describe('switching it on', () => {
  test('says what leaves the machine and to whom, and asks nobody yet', async () => {
    const { flock, wanted } = flockWith(came());
    expect(await say(flock, ...on)).toEqual([
      'Written: Fetching of forecasts: yes.',
      'Only the coordinates 44.1 -73.2 leave this machine, to the National Weather Service of the United States (api.weather.gov; open data, free for any use), and to Open-Meteo (api.open-meteo.com; free for non-commercial use, under CC BY 4.0) only where that has no forecast for the place.',
      'Is that outside the United States? Then say so first, as "our country is Canada": only the second is asked then.',
      'Say "get the forecast" to fetch it; "forecast off" ends it.',
    ]);
    expect(wanted).toEqual([]);
  });

  test('with the country told, its service is asked, or is left out', async () => {
    const { flock, wanted } = flockWith(came());
    expect(await say(flock, 'our country is Canada', 'our place is at 43.7 -79.4', 'forecast on')).toEqual([
      'Written: Fetching of forecasts: yes.',
      'Only the coordinates 43.7 -79.4 leave this machine, to Open-Meteo (api.open-meteo.com; free for non-commercial use, under CC BY 4.0).',
      'Say "get the forecast" to fetch it; "forecast off" ends it.',
    ]);
    await say(flock, 'get the forecast');
    const [, ...home] = await say(flock, 'our country is the USA', 'forecast on');
    await say(flock, 'get the forecast');
    expect(home.length).toBe(2);
    expect(wanted.map(({ isInUs }) => isInUs)).toEqual([false, true]);
  });

  test('without a place it asks for one; a place without it says how to go on', async () => {
    const { flock } = flockWith(came());
    expect(await say(flock, 'forecast on')).toEqual([
      'Written: Fetching of forecasts: yes.',
      'Nothing is fetched until the place is known.',
      'Say where you are in degrees north and east, as: our place is at 44.1 -73.2',
    ]);
    expect(await say(flock, 'forecast off')).toEqual([
      'Written: Fetching of forecasts: no.',
      'Nothing leaves this machine.',
    ]);
    expect(await say(flock, 'our place is at 52.1 5.3')).toEqual([
      'Written: Place by degrees north and east: 52.1 5.3.',
      'Nothing leaves this machine.',
      'Say "forecast on" to have it fetched.',
    ]);
  });
});

describe('getting it', () => {
  test('writes the days and shows them in full with the words that the service asks for', async () => {
    const { flock, wanted } = flockWith(came());
    expect(await say(flock, ...on, 'get the forecast')).toEqual([
      'The weather on record up to today.',
      'Today: night low 38 °F, high 61 °F, rain 0.16 in, wind 11 mph and humidity 60%.',
      'Fetched Thursday 14 May at 12:00.',
      'Forecast of the U.S. National Weather Service, https://www.weather.gov; its hours are gathered into days here.',
    ]);
    expect(
      wanted.map(({ place, freshFor, days, nightBegins, nightEnds }) => [
        place,
        freshFor,
        days,
        nightBegins,
        nightEnds,
      ]),
    ).toEqual([[{ latitude: 44.1, longitude: -73.2 }, 0, 5, 18, 9]]);
    expect(JSON.parse(lines().at(-1) ?? '')).toEqual({
      kind: 'weather',
      on: '2026-05-14',
      low: '3.5 C',
      high: '16 C',
      rain: '4 mm',
      wind: '5 m/s',
      humidity: '60 percent',
      forecast: true,
      fetched: noon,
      provider: 'us',
      written: noon,
    });
  });

  test('the same again writes nothing', async () => {
    const { flock } = flockWith(came());
    await say(flock, ...on, 'get the forecast', 'get the forecast');
    expect(lines().length).toBe(3);
  });

  test('what was typed in outranks it and is marked', async () => {
    const { flock } = flockWith(came());
    const shown = await say(flock, ...on, 'low of 41 tonight', 'get the forecast');
    expect(shown[1]).toBe(
      'Today: night low 41 °F (typed in), high 61 °F, rain 0.16 in, wind 11 mph and humidity 60%.',
    );
  });

  test('off or without a place nobody is asked', async () => {
    const { flock, wanted } = flockWith(came());
    expect(await say(flock, 'get the forecast')).toEqual([
      'Forecasts are not fetched.',
      'Say "forecast on" to switch that on.',
    ]);
    expect(await say(flock, 'forecast on', 'get the forecast')).toEqual([
      'No forecast is fetched, as the place is not known.',
      'Say where you are in degrees north and east, as: our place is at 44.1 -73.2',
    ]);
    expect(wanted).toEqual([]);
  });

  test('offline is told with what to do, and answers go on', async () => {
    const { flock } = flockWith(offline);
    expect(await say(flock, ...on, 'get the forecast')).toEqual([
      'No forecast came from the National Weather Service of the United States: there is no way to it, as without a network.',
      'Answers go on with what is on record.',
      'Try again later; a low typed in, as "low of 38 tonight", does as well.',
    ]);
    expect(lines().length).toBe(2);
  });

  test('asking only, or in the demo, nothing is fetched and nothing is written', async () => {
    const { flock, wanted } = flockWith(came());
    await say(flock, ...on);
    const reply = await turn(flock, 'get the forecast', nothingYet, {
      on: flock.today,
      group: null,
      write: false,
    });
    const demo = openDemo({ book: shipped, lexicon, today: '2026-05-14', asOf: null });
    const none = ['No forecast is fetched here, as nothing can be written.'];
    expect([textsOf(reply.tokens), wanted, lines().length]).toEqual([none, [], 2]);
    expect(await say(demo, 'forecast on')).toContain(
      'Nothing is written, as this is the demo. To start your own flock file: penside new',
    );
  });
});

test('an answer rests on it, says nothing of its age on the same day, and tells it on the next', async () => {
  const tomorrow: ForecastDay = { ...cold, on: '2026-05-15' };
  const arrived = '40 whites hatched on 7 April came on 9 April, none dead';
  const { flock } = flockWith(came([cold, tomorrow]));
  await say(flock, ...on, arrived, 'the whites went out to the pen on 1 may', 'get the forecast');
  const aged = 'the forecast fetched on Thursday 14 May, 1 day ago, is taken, as none newer is on record';
  const question = 'is it too cold for the whites tonight';
  expect((await say(flock, question)).join('\n')).not.toContain(aged);
  const { flock: next } = flockWith(came(), '2026-05-15T07:00:00-04:00');
  expect((await say(next, question)).join('\n')).toContain(aged);
});

test('undo takes back what was said last, and no forecast', async () => {
  const { flock } = flockWith(came());
  await say(flock, ...on, 'low of 41 tonight', 'get the forecast');
  expect((await say(flock, 'undo'))[0]).toBe('Taken back: Low 41 °F, as forecast.');
});

describe('while the chat is open', () => {
  const begun = Promise.resolve();
  const settle = async (): Promise<void> => {
    for (let n = 0; n < 20; n += 1) await Promise.resolve();
  };

  test('it is written when next something is said, and told once in one line', async () => {
    const { flock, wanted } = flockWith(came());
    await say(flock, ...on);
    const news = expectForecast(flock, begun);
    await settle();
    expect(lines().length).toBe(2);
    expect(await news()).toEqual([
      { t: 'detail', text: 'The forecast of Thursday 14 May at 12:00 is on record now.' },
    ]);
    expect(await news()).toEqual([]);
    expect([lines().length, wanted[0]?.freshFor]).toEqual([3, 3 * 3_600_000]);
  });

  test('nothing waits for it', async () => {
    const { flock } = flockWith(came());
    await say(flock, ...on);
    expect(await expectForecast(flock, new Promise(() => undefined))()).toEqual([]);
  });

  test('offline is one quiet line', async () => {
    const { flock } = flockWith(offline);
    await say(flock, ...on);
    const news = expectForecast(flock, begun);
    await settle();
    expect(await news()).toEqual([
      {
        t: 'detail',
        text: 'No forecast came from the National Weather Service of the United States: there is no way to it, as without a network. Answers go on with what is on record.',
      },
    ]);
  });

  test('a flock that never asked for it hears nothing, and nobody is asked', async () => {
    const { flock, wanted } = flockWith(came());
    const news = expectForecast(flock, begun);
    await settle();
    expect([await news(), wanted]).toEqual([[], []]);
  });

  test('switched off while it was on its way, it is not written', async () => {
    const { flock } = flockWith(came());
    await say(flock, ...on);
    const news = expectForecast(flock, begun);
    await settle();
    await say(flock, 'forecast off');
    expect([await news(), lines().length]).toEqual([[], 3]);
  });
});
