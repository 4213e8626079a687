/** "why the 18" of a round: how many things it takes for granted, opened one by one. */
import { describe, expect, test } from 'vitest';
import { demoLedger } from '../../../cli/demo/demo.ts';
import { sayAnswer } from '../../../cli/say/answer.ts';
import { plain } from '../../../cli/say/plain.ts';
import type { Speech } from '../../../cli/say/speech.ts';
import { sayWhy } from '../../../cli/say/why.ts';
import { sayNumber } from '../../../cli/say/why-number.ts';
import { addDays } from '../../../engine/day.ts';
import { openText } from '../../../engine/index.ts';
import { ask, shipped } from '../../helpers/flock-of.ts';

const today = '2026-05-14';
const demo = openText(shipped, 'demo', demoLedger(today));
const speech: Speech = { book: shipped, system: 'us', currency: '$', today };
const unfold = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

describe.each([0, -7, 14].map((ahead) => addDays(today, ahead)))('on %s', (on) => {
  test('as many things as are said are listed, and they are those that "why" lists', async () => {
    const round = await ask(demo, 'today', on);
    const said = /^(\d+) things are taken for granted here: /m.exec(
      plain(sayAnswer(speech, round), 1000).join('\n'),
    );
    const [, number = ''] = said ?? [];
    const tokens = sayNumber(speech, round, demo.lines, number);
    const heading = { t: 'heading', text: `${number} things are taken for granted here` } as const;
    const from = tokens.findIndex(
      ({ t, ...rest }) => t === 'heading' && 'text' in rest && rest.text === heading.text,
    );
    const things = tokens
      .slice(from + 1, from + 1 + Number(number))
      .map((token) => (token.t === 'detail' ? token.text : ''));
    expect(tokens[from]).toEqual(heading);
    expect(sayWhy(speech, round)).toContainEqual({
      t: 'detail',
      text: `Taken for granted: ${things.map((thing) => unfold(thing.replace(/\.$/, ''))).join('; ')}.`,
    });
  });
});
