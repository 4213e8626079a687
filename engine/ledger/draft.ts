/** A state in the making: what `apply` of each entry kind adds to, before it is handed out as a State. */
import type { Day } from '../day.ts';
import type { Group, Moment, Setting, State, WeatherDay } from '../types.ts';

type Growing<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer Item)[] ? Item[] : T[K] };

export type GroupDraft = Growing<Group>;

export type Measurement = 'low' | 'high' | 'rain' | 'wind' | 'humidity';

export interface WeatherDraft {
  readonly day: Growing<WeatherDay>;
  /** How sure each value is that stands: nothing less sure replaces it. */
  readonly sureness: Map<Measurement, number>;
}

export interface StateDraft extends Omit<Growing<State>, 'on' | 'lines' | 'groups' | 'weather' | 'settings'> {
  /** By name, in order of arrival. */
  readonly groups: Map<string, GroupDraft>;
  readonly weather: Map<Day, WeatherDraft>;
  readonly settings: Map<string, Setting[]>;
}

/** A state in which nothing has happened yet. */
export const startDraft = (): StateDraft => ({
  groups: new Map(),
  feedings: [],
  purchases: [],
  moves: [],
  signs: [],
  weather: new Map(),
  settings: new Map(),
  shares: [],
  eaten: [],
  ownFigures: [],
  notes: [],
});

/** The state that the draft has become on the day of the moment. */
export const finishDraft = (draft: StateDraft, on: Moment['on'], lines: number): State => ({
  ...draft,
  on,
  groups: [...draft.groups.values()],
  weather: Object.fromEntries([...draft.weather].map(([day, { day: weather }]) => [day, weather])),
  settings: Object.fromEntries(draft.settings),
  lines,
});
