import { expect, test } from 'vitest';
import { draftsBy, listener } from '../../helpers/heard.ts';

const { hear } = listener();

const draftsOf = draftsBy(hear);

const today = '2026-05-14';
const lastNight = '2026-05-13';

test('several things told in one breath become several drafts', () => {
  expect(draftsOf('fed the whites 10 lb and the reds 8, moved the pen and it was 46 last night')).toEqual([
    { kind: 'feed', on: today, group: 'whites', amount: '10 lb' },
    { kind: 'feed', on: today, group: 'reds', amount: '8 lb' },
    { kind: 'move', on: today, group: 'reds' },
    { kind: 'weather', on: lastNight, low: '46 F' },
  ]);
  expect(draftsOf('lost 2 reds and 1 white to a hawk')).toEqual([
    { kind: 'loss', on: today, group: 'reds', count: 2, cause: 'hawk' },
    { kind: 'loss', on: today, group: 'whites', count: 1, cause: 'hawk' },
  ]);
});

test('a day said once goes for the whole breath, a night only for the weather', () => {
  expect(draftsOf('yesterday I fed the whites 10 lb and moved the pen')?.map((each) => each.on)).toEqual([
    lastNight,
    lastNight,
  ]);
  expect(draftsOf('46 last night, fed the whites 10 lb and moved the pen')?.map((each) => each.on)).toEqual([
    lastNight,
    today,
    today,
  ]);
});
