/** Lamp power that keeps a spot warm: what warms the whole box and what falls on the spot both count. */

/** What a heated spot in an open box gains and loses; heat in watts, losses in watts per degree. */
export interface HeatedSpot {
  /** Degrees that the spot must be warmer than the surroundings. */
  readonly gap: number;
  /** Heat that the bodies in the box give to its air. */
  readonly ownHeat: number;
  /** Loss of the whole box. */
  readonly boxLoss: number;
  /** Part of the power that falls on the spot, 0..1. */
  readonly onSpot: number;
  /** Loss of the spot's surface. */
  readonly spotLoss: number;
}

/** Degrees by which the bodies in the box warm its air. */
export const ownWarming = ({ ownHeat, boxLoss }: Pick<HeatedSpot, 'ownHeat' | 'boxLoss'>): number =>
  ownHeat / boxLoss;

/**
 * Power in watts that closes the gap: `gap = (ownHeat + power) / boxLoss + power × onSpot / spotLoss`, solved for the
 * power; 0 where the bodies close it themselves.
 */
export const powerFor = (spot: HeatedSpot): number =>
  Math.max(0, spot.gap - ownWarming(spot)) / (1 / spot.boxLoss + spot.onSpot / spot.spotLoss);
