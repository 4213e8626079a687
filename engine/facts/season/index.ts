/** All facts of the season: what is asked, and the dates, weather, room and absences of a batch. */
import { seasonAskedFacts } from './asked.ts';
import { batchAwayFacts } from './away.ts';
import { batchDateFacts } from './dates.ts';
import { normalFacts } from './normals.ts';
import { batchRoomFacts } from './room.ts';
import { batchWeatherFacts } from './weather.ts';

export const seasonFacts = [
  ...normalFacts,
  ...seasonAskedFacts,
  ...batchDateFacts,
  ...batchWeatherFacts,
  ...batchRoomFacts,
  ...batchAwayFacts,
];
