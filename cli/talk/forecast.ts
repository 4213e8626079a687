/** Lines about fetching forecasts: switching it on or off, telling the place, getting one now, showing it. */
import { emptyJson } from '../say/as-json.ts';
import { sayWhatLeaves } from '../say/forecast.ts';
import type { Token } from '../say/tokens.ts';
import { readingOf } from '../understand/reading-of.ts';
import type { Heard, Reading } from '../understand/types.ts';
import { sourcesFor } from '../weather/choose.ts';
import { sayPlace } from '../weather/place.ts';
import { type Flock, momentOn } from './flock.ts';
import type { ForecastWish } from './forecast-wish.ts';
import { nothingHeard } from './heard-as-json.ts';
import { leaveByRecord } from './inside.ts';
import { exits, type Memory, type Reply } from './reply.ts';
import { daysAsJson, howToPlace, sayTaken, showForecast } from './show-forecast.ts';
import { forecastSetting, isInUs, type Taken, takeForecast } from './take-forecast.ts';
import { tellReading } from './tell.ts';

const detail = (text: string): Token => ({ t: 'detail', text });

const settingOf = (flock: Flock, what: string, value: string): Reading => ({
  ...readingOf('tell:setting', 'speaks of fetching forecasts', value),
  on: flock.today,
  entries: [{ kind: 'setting', on: flock.today, fields: { what, value }, missing: [] }],
});

const exitOf = ({ t }: Taken): number => {
  if (t === 'failed' || t === 'refused') return exits.problems;
  return t === 'taken' ? exits.answered : exits.cannotSay;
};

const talk = (flock: Flock, words: string, tokens: readonly Token[], exit: number, memory: Memory): Reply => {
  const claim = tokens.find((token) => token.t === 'claim');
  return {
    tokens,
    json: {
      ...emptyJson(words, { ...nothingHeard, question: 'forecast' }),
      verdict: exit === exits.answered ? 'list' : 'cannot-say',
      headline: claim?.t === 'claim' ? claim.text : '',
      results: daysAsJson(flock),
    },
    record: null,
    exit,
    memory: { ...memory, choices: [] },
  };
};

const howToCountry =
  'Is that outside the United States? Then say so first, as "our country is Canada": only the second is asked then.';

/** What is said beside a setting: what it means for what leaves the machine. */
const beside = (flock: Flock, wish: ForecastWish['wish']): readonly Token[] => {
  const { isOn, place } = forecastSetting(flock.engine().state(momentOn(flock, flock.today)));
  if (wish === 'off' || (wish === 'place' && !isOn)) {
    const next =
      wish === 'off' ? [] : [{ t: 'next', text: 'Say "forecast on" to have it fetched.' } as const];
    return [detail('Nothing leaves this machine.'), ...next];
  }
  if (place === null)
    return [detail('Nothing is fetched until the place is known.'), { t: 'next', text: howToPlace }];
  const sources = sourcesFor(place, isInUs(flock));
  // The boxes of a country reach across its borders: whoever lives beyond one can say so before anything is sent.
  const isDoubtful = sources.length > 1 && isInUs(flock) === null;
  return [
    detail(sayWhatLeaves(sayPlace(place), sources)),
    ...(isDoubtful ? [detail(howToCountry)] : []),
    { t: 'next', text: 'Say "get the forecast" to fetch it; "forecast off" ends it.' },
  ];
};

const setOne = async (
  flock: Flock,
  words: string,
  wish: ForecastWish,
  memory: Memory,
  write: boolean,
): Promise<Reply> => {
  const reading =
    wish.wish === 'place'
      ? settingOf(flock, 'place-at', wish.place)
      : settingOf(flock, 'forecast', wish.wish === 'on' ? 'yes' : 'no');
  const heard: Heard = { words, readings: [reading], sure: true, nearest: [] };
  const reply = leaveByRecord(await tellReading(flock, words, heard, reading, memory, write), memory.inside);
  const isWritten = reply.record?.recorded != null;
  return isWritten ? { ...reply, tokens: [...reply.tokens, ...beside(flock, wish.wish)] } : reply;
};

/** Carries out what a line about forecasts wishes. With `write` false nothing is written and nothing is fetched. */
export const answerForecast = async (
  flock: Flock,
  words: string,
  wish: ForecastWish,
  memory: Memory,
  write: boolean,
): Promise<Reply> => {
  if (wish.wish === 'no-place')
    return talk(
      flock,
      words,
      [
        { t: 'claim', text: 'That is no place.' },
        { t: 'next', text: howToPlace },
      ],
      exits.notUnderstood,
      memory,
    );
  if (wish.wish === 'show') return talk(flock, words, showForecast(flock), exits.answered, memory);
  if (wish.wish !== 'get') return setOne(flock, words, wish, memory, write);
  const taken: Taken = write ? await takeForecast(flock, true) : { t: 'read-only' };
  return talk(flock, words, sayTaken(flock, taken), exitOf(taken), memory);
};
