/** The forecast for the place: fetched, shown in full, switched on and off. */
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import type { Surroundings } from '../surroundings.ts';
import { answerForecast } from '../talk/forecast.ts';
import { forecastWish } from '../talk/forecast-wish.ts';
import { exits, nothingYet } from '../talk/reply.ts';
import { forecastAsJson, sayTaken, showForecast } from '../talk/show-forecast.ts';
import { takeForecast } from '../talk/take-forecast.ts';
import { type Command, type Given, type Outcome, wrongUse } from './command.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

/** `on`, `off` and `at 44.1 -73.2`: the same as said in the chat. */
const set = async (given: Given, around: Surroundings): Promise<Outcome> => {
  const words = `forecast ${given.words.join(' ')}`;
  const wish = forecastWish(words);
  if (wish === null || wish.wish === 'get' || wish.wish === 'show')
    return wrongUse('weather wants nothing, on, off, or a place as: penside weather at 44.1 -73.2');
  const opened = await openFlock(given, around, false);
  if ('exit' in opened) return opened;
  const reply = await answerForecast(opened.flock, words, wish, nothingYet, true);
  const out = given.options.json === true ? [jsonLine(reply.json)] : plain(reply.tokens, around.width);
  return { out, err: [], exit: reply.exit };
};

const show = async (given: Given, around: Surroundings): Promise<Outcome> => {
  const opened = await openFlock(given, around, true);
  if ('exit' in opened) return opened;
  const { flock } = opened;
  const taken = await takeForecast(flock, given.options.now === true);
  const isHere = taken.t === 'taken';
  const exit = taken.t === 'failed' || taken.t === 'refused' ? exits.problems : exits.answered;
  if (given.options.json === true) return { out: [jsonLine(forecastAsJson(flock, taken))], err: [], exit };
  return {
    out: plain(showForecast(flock), around.width),
    err: isHere ? [] : plain(sayTaken(flock, taken), around.width),
    exit,
  };
};

export const weather: Command = {
  name: 'weather',
  says: 'show the forecast for your place, fetched where you have switched that on',
  usage: 'penside weather [options] [on | off | at LATITUDE LONGITUDE]',
  words: ['on', 'off', 'at'],
  options: [
    { name: 'now', takes: null, says: 'fetch also where the last forecast is still fresh' },
    options.json,
    options.file,
  ],
  run: (given, around) => (given.words.length === 0 ? show(given, around) : set(given, around)),
};
