/** What the map of the ground is drawn from: the strips, how far each was used, and where the pens stand. */
import { defineFact } from '../define.ts';
import { fieldEach, fieldFigures, fieldOf, fieldWants } from '../ground/field.ts';

export const groundSeriesFacts = [
  defineFact({
    id: 'ground-series',
    unit: 'series',
    per: 'flock',
    wants: fieldWants,
    each: fieldEach,
    figures: fieldFigures,
    compute: (read) => {
      const ground = fieldOf(read);
      const body = Number(read.maybe('pen-length') ?? 0);
      if (ground === undefined || body <= 0) return undefined;
      const places = Math.floor(Number(read.maybe('strip-length')) / body + 1e-9);
      const namesIn = (pen: string): string[] =>
        [...ground.homes].flatMap(([group, pens]) => (pens.includes(pen) ? [group] : []));
      const pens = Object.entries(ground.field.spots).map(([pen, { lane, from, away }]) => ({
        groups: namesIn(pen),
        strip: lane,
        place: Math.round(from / body),
        away,
      }));
      return JSON.stringify({
        places,
        used: ground.field.lanes.map(({ room }) => places - room),
        pens: pens.filter(({ groups }) => groups.length > 0),
      });
    },
  }),
];
