/** Bodies that go along lanes side by side, each to the end of its lane and then into another: where they are and what is left. */

/** A field of equal lanes, numbered from 1. Lengths are in one unit, times in another. */
export interface Lanes {
  readonly count: number;
  readonly length: number;
  /** Length of a body, which is also how far it goes when nothing else is said. */
  readonly body: number;
  /** How long a lane must lie untouched before it counts as never walked. */
  readonly rest: number;
}

/** What happens to a body: it is set down, goes on, or is taken away. */
export interface Stride {
  readonly who: string;
  readonly does: 'sets' | 'goes' | 'leaves';
  readonly at: number;
  /** The lane it is put into, where that was said. */
  readonly lane: number | null;
  /** How far it goes; null for its own length. */
  readonly by: number | null;
}

/** Where a body lies. */
export interface Spot {
  readonly lane: number;
  /** From where its lane is entered to the near end of the body. */
  readonly from: number;
  /** Whether it goes away from the end where the first lane was entered, or comes back toward it. */
  readonly away: boolean;
  /** Whole body lengths still ahead of it in its lane. */
  readonly ahead: number;
}

export interface Lane {
  /** When a body was last in it, or is in it now; null when never. */
  readonly used: number | null;
  /** Whole body lengths that nothing has lain on since it last rested. */
  readonly room: number;
}

export interface Field {
  /** By body; a body that found no room, or went where there is no lane, has no spot. */
  readonly spots: Readonly<Record<string, Spot>>;
  /** Lane 1 first. */
  readonly lanes: readonly Lane[];
}

interface Track {
  /** How far it has been walked since it last rested. */
  reach: number;
  used: number | null;
}

interface Walker {
  lane: number;
  from: number;
  away: boolean;
}

/** A length measured twice may differ in its last digit; no body is turned away for that. */
const whole = (lengths: number): number => Math.max(0, Math.floor(lengths + 1e-9));

/** The lanes from one on, all round: after the last comes the first. */
const laneAfter = (count: number, lane: number, steps: number): number => ((lane - 1 + steps) % count) + 1;

/**
 * Walks all strides in the order given, and tells how the field lies at a time.
 * A body at the end of its lane turns into the next one with room that no other body is in, and goes back along it.
 */
export const walkLanes = (lanes: Lanes, strides: readonly Stride[], now: number): Field => {
  const { count, length, body, rest } = lanes;
  const tracks: Track[] = Array.from({ length: count }, () => ({ reach: 0, used: null }));
  const walkers = new Map<string, Walker | null>();

  const isTaken = (lane: number, who: string): boolean =>
    [...walkers].some(([name, walker]) => name !== who && walker?.lane === lane);
  const roomIn = (track: Track): number => whole((length - track.reach) / body);
  const restAt = (at: number): void => {
    tracks.forEach((track, index) => {
      const lain = track.used === null ? 0 : at - track.used;
      if (lain >= rest && !isTaken(index + 1, '')) track.reach = 0;
    });
  };
  const freeFrom = (lane: number, who: string): number | undefined =>
    Array.from({ length: count }, (_, steps) => laneAfter(count, lane, steps)).find((each) => {
      const track = tracks[each - 1];
      return track !== undefined && roomIn(track) >= 1 && !isTaken(each, who);
    });
  const lie = (who: string, lane: number | undefined, from: number, away: boolean, at: number): void => {
    const track = lane === undefined ? undefined : tracks[lane - 1];
    walkers.set(who, lane === undefined || track === undefined ? null : { lane, from, away });
    if (track === undefined) return;
    track.reach = Math.max(track.reach, from + body);
    track.used = at;
  };
  const enter = (who: string, lane: number | undefined, away: boolean, at: number): void => {
    const track = lane === undefined ? undefined : tracks[lane - 1];
    // Where a lane has no room left, the body lies at its beginning once more.
    lie(who, lane, track !== undefined && roomIn(track) >= 1 ? track.reach : 0, away, at);
  };

  for (const { who, does, at, lane, by } of strides) {
    restAt(at);
    const walker = walkers.get(who) ?? null;
    const here = walker === null ? undefined : tracks[walker.lane - 1];
    if (here !== undefined) here.used = at;
    if (does === 'leaves') walkers.delete(who);
    else if (does === 'sets' || walker === null) enter(who, lane ?? freeFrom(1, who), true, at);
    else if (lane !== null && lane !== walker.lane) enter(who, lane, !walker.away, at);
    else {
      const from = walker.from + (by ?? body);
      const fits = whole((length - from) / body) >= 1;
      if (fits) lie(who, walker.lane, from, walker.away, at);
      else enter(who, freeFrom(laneAfter(count, walker.lane, 1), who), !walker.away, at);
    }
  }

  restAt(now);
  for (const walker of walkers.values()) {
    const track = walker === null ? undefined : tracks[walker.lane - 1];
    if (track !== undefined) track.used = now;
  }
  const spots = [...walkers].flatMap(([who, walker]): [string, Spot][] =>
    walker === null ? [] : [[who, { ...walker, ahead: whole((length - walker.from) / body - 1) }]],
  );
  return {
    spots: Object.fromEntries(spots),
    lanes: tracks.map((track) => ({ used: track.used, room: roomIn(track) })),
  };
};

/** The lane that a body would turn into from its own, taking those named as gone; undefined when none has room. */
export const nextLane = (field: Field, who: string, gone: readonly number[] = []): number | undefined => {
  const spot = field.spots[who];
  const taken = new Set([...Object.values(field.spots).map((each) => each.lane), ...gone]);
  const count = field.lanes.length;
  return Array.from({ length: count }, (_, steps) => laneAfter(count, spot?.lane ?? 1, steps)).find(
    (lane) => !taken.has(lane) && (field.lanes[lane - 1]?.room ?? 0) >= 1,
  );
};
