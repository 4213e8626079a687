/** Suppositions of every sort – fact, figure, rule switched off, entry – beside the answer without them; nothing is written. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Engine, openFile } from '../../../engine/index.ts';
import type { Request, Supposition, WhatIf } from '../../../engine/types.ts';
import { flockOf, type Line, shipped } from '../../helpers/flock-of.ts';
import { arrive, heatDown, nights, pen, ready, today } from '../ask/go-out-flock.ts';

const near: Line = {
  kind: 'figure',
  on: '2026-05-04',
  figure: 'search/look-ahead',
  value: '1 day',
  reason: 'for this test',
};
const requestFor = (question: string, more: Partial<Request> = {}): Request => ({
  question,
  groups: [],
  moment: { on: today, asOf: null, lines: null },
  until: null,
  supposing: [],
  ...more,
});
const asked = (flock: Engine, question: string, ...supposing: readonly Supposition[]): Promise<WhatIf> =>
  flock.askWhatIf(requestFor(question), supposing);

const fact = (id: string, value: number | string, more: Partial<Supposition> = {}): Supposition => ({
  what: { fact: id },
  value,
  adds: false,
  ...more,
});
const off = (id: string): Supposition => ({ what: { rule: id }, value: 'off', adds: false });
const told = (entry: Line & { readonly kind: string; readonly on: string }): Supposition => ({
  what: { entry },
  value: 'told',
  adds: false,
});

const verdicts = ({ before, after }: WhatIf) =>
  [before, after].map(({ parts }) => parts.map(({ verdict, rule }) => [verdict, rule]));

describe('a fact', () => {
  test('turns an answer, and the condition that lets the other rule decide is named', async () => {
    const compared = await asked(flockOf(...ready, near), 'go-out', fact('night-low', 0));
    expect(verdicts(compared)).toEqual([[['yes', 'go-out/may-go']], [['no', 'go-out/cold-night']]]);
    expect(compared.turned).toHaveLength(1);
    expect(compared.turned[0]).toMatchObject({
      group: 'reds',
      from: 'go-out/may-go',
      to: 'go-out/cold-night',
      now: [{ rule: 'go-out/cold-night', outcome: 'held', fact: { id: 'night-low', value: 0 } }],
      noLonger: [{ rule: 'go-out/may-go', outcome: 'failed', fact: { id: 'night-low', value: 0 } }],
    });
    expect(compared.differences[0]).toMatchObject({ what: 'verdict', group: 'reds', from: 'yes', to: 'no' });
  });

  test('that makes no difference shows none', async () => {
    const compared = await asked(flockOf(...ready, near), 'go-out', fact('eaters', 9));
    expect([compared.differences, compared.turned]).toEqual([[], []]);
  });

  test('can be added to, multiplied, or supposed of one group alone', async () => {
    const both = flockOf(arrive, { ...arrive, group: 'whites', count: 40, bird: 'fast' }, { ...near });
    const alive = async (supposing: Supposition): Promise<readonly unknown[]> => {
      const { after } = await asked(both, 'headcount', supposing);
      return after.parts.map(({ group }) => [
        group,
        after.workings.find((step) => step.fact === 'alive' && step.group === group)?.value,
      ]);
    };
    expect(await alive(fact('alive', -5, { adds: true }))).toEqual([
      ['reds', 20],
      ['whites', 35],
    ]);
    expect(await alive(fact('alive', 1 / 2, { times: true }))).toEqual([
      ['reds', 13],
      ['whites', 20],
    ]);
    expect(await alive(fact('alive', 3, { group: 'whites' }))).toEqual([
      ['reds', 25],
      ['whites', 3],
    ]);
  });
});

test('a figure is laid over in base units, added to or multiplied, and says so where it is used', async () => {
  const waiting = flockOf(arrive, pen, heatDown('2026-05-28'), ...nights('55 F'), near);
  const days = async (value: number, more: Partial<Supposition> = {}) => {
    const { after } = await asked(waiting, 'go-out', {
      what: { figure: 'pasture/hardening-days' },
      value,
      adds: false,
      ...more,
    });
    return [
      after.parts[0]?.verdict,
      after.parts[0]?.reasons.find(({ figure }) => figure?.id === 'pasture/hardening-days')?.figure?.value,
    ];
  };
  expect(await days(2)).toEqual(['yes', 2]);
  expect(await days(-1, { adds: true })).toEqual(['no', 4]);
  expect(await days(2, { times: true })).toEqual(['no', 10]);
});

describe('a rule switched off', () => {
  const wet = flockOf(arrive, pen, heatDown('2026-05-20'), ...nights('55 F', { rain: '10 mm' }), near);

  test('leaves the decision to the next one', async () => {
    const compared = await asked(wet, 'go-out', off('go-out/cold-rain'));
    const [before, after] = verdicts(compared);
    expect(before).toEqual([['no', 'go-out/cold-rain']]);
    expect(after?.[0]?.[1]).not.toBe('go-out/cold-rain');
    expect(compared.after.parts[0]?.passedOver.map(({ rule }) => rule)).not.toContain('go-out/cold-rain');
  });

  test('is off in the list that gathers its question too', async () => {
    const due = flockOf(...ready, near);
    const steps = async (...supposing: readonly Supposition[]) =>
      (await due.ask(requestFor('today', { supposing }))).parts.flatMap((part) =>
        part.steps.map(({ rule }) => rule),
      );
    expect(await steps()).toContain('go-out/may-go');
    expect(await steps(off('go-out/may-go'))).not.toContain('go-out/may-go');
  });
});

describe('an entry', () => {
  const hawk = { kind: 'loss', on: today, group: 'reds', count: 2, cause: 'hawk' } as const;

  test('counts as if it had been told, in every fact that reads the ledger', async () => {
    const { before, after } = await asked(flockOf(arrive, near), 'headcount', told(hawk));
    const alive = [before, after].map((each) => each.workings.find((step) => step.fact === 'alive')?.value);
    expect(alive).toEqual([25, 23]);
    expect(after.workings.find((step) => step.fact === 'lost')?.entries).toEqual([{ on: today, line: 3 }]);
  });

  test('stands behind what is believed, however little that is', async () => {
    const flock = flockOf(arrive, { ...hawk, count: 5 }, near);
    const { after } = await flock.askWhatIf(
      requestFor('headcount', { moment: { on: today, asOf: null, lines: 1 } }),
      [told(hawk)],
    );
    expect(after.workings.find((step) => step.fact === 'alive')?.value).toBe(23);
  });

  test('leaves every byte of the file as it was', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'penside-'));
    try {
      const path = join(folder, 'flock.jsonl');
      writeFileSync(path, `${JSON.stringify(arrive)}\n`);
      const before = readFileSync(path);
      const flock = openFile(shipped, path);
      await asked(flock, 'headcount', told(hawk), fact('alive', 3), off('headcount/counted'));
      expect(readFileSync(path).equals(before)).toBe(true);
      expect(flock.lines).toEqual([JSON.stringify(arrive)]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
