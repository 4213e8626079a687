/** What the birds leave on the ground they are given, by plan until they are ready and as it stands today. */
import { daysBetween } from '../../day.ts';
import { defineFact } from '../define.ts';
import { planCurve, planFigures, planNeeds } from '../growth/plan.ts';
import { outSince } from './moves.ts';

const squareMetresInHectare = 10_000;

export const nitrogenFacts = [
  defineFact({
    id: 'nitrogen-load',
    unit: 'kg/ha',
    needs: ['alive', 'ground-had', 'ground-needed', 'pen-area', 'pens-of-group'],
    figures: ['pasture/nitrogen-per-bird'],
    compute: (read) => {
      const had = read.number('ground-had');
      // Birds that are not out yet will stand on one piece before the first move.
      const first = had > 0 ? had : read.number('pen-area') * read.number('pens-of-group');
      const hectares = (first + read.number('ground-needed')) / squareMetresInHectare;
      return hectares === 0
        ? undefined
        : (read.number('alive') * read.figure('pasture/nitrogen-per-bird')) / hectares;
    },
  }),
  defineFact({
    id: 'nitrogen-so-far',
    unit: 'kg/ha',
    needs: ['alive', 'ground-had', 'live-weight', 'wanted-carcass', 'dressing-share', ...planNeeds],
    figures: [...planFigures, 'pasture/nitrogen-per-bird'],
    compute: (read) => {
      const out = outSince(read);
      if (out === undefined || read.number('ground-had') === 0) return undefined;
      const plan = planCurve(read);
      const ageOn = (day: string): number => daysBetween(read.group.hatched, day);
      const now = read.number('live-weight');
      const whenOut = (now * plan(ageOn(out.on))) / plan(ageOn(read.on));
      const whenReady = read.number('wanted-carcass') / read.number('dressing-share');
      // Feed, and with it what is not kept of it, goes about with the weight put on.
      const share = Math.min(1, (now - whenOut) / whenReady);
      const left = read.number('alive') * read.figure('pasture/nitrogen-per-bird') * share;
      return left / (read.number('ground-had') / squareMetresInHectare);
    },
  }),
];
