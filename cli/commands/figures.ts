/** The figures of the book: all by what they are about, those that some words are about, or one whole. */
import { jsonLine } from '../say/json-line.ts';
import { plain } from '../say/plain.ts';
import { figureAsJson, sayFigureList } from '../say/rulebook-list.ts';
import { sayFigurePage } from '../say/rulebook-page.ts';
import { speechFor } from '../talk/flock.ts';
import { exits } from '../talk/reply.ts';
import { listedRules, ownFiguresOf } from '../talk/rule-source.ts';
import type { Command } from './command.ts';
import { openFlock } from './open.ts';
import * as options from './options.ts';

export const figures: Command = {
  name: 'figures',
  says: 'list the figures, those that some words are about, or one by its name',
  usage: 'penside figures [options] [WORDS]',
  options: [options.json, options.own, options.on, options.file],
  run: async (given, around) => {
    const opened = await openFlock(given, around, true);
    if ('exit' in opened) return opened;
    const { flock } = opened;
    const words = given.words.join(' ');
    const speech = speechFor(flock);
    const isOwn = given.options.own === true;
    const set = ownFiguresOf(flock);
    const named = flock.book.figures[words];
    const found = named === undefined ? listedRules(flock, words, isOwn).figures : [named];
    const exit = found.length > 0 ? exits.answered : exits.cannotSay;
    if (given.options.json === true)
      return { out: found.map((figure) => jsonLine(figureAsJson(speech, figure, set))), err: [], exit };
    const [only, ...others] = found;
    const out =
      only !== undefined && others.length === 0
        ? sayFigurePage(speech, only, set)
        : sayFigureList(speech, found, set);
    const nothing = isOwn ? 'You have set no figure of your own.' : `No figure is about ${words}.`;
    return { out: found.length === 0 ? [nothing] : plain(out, around.width), err: [], exit };
  },
};
