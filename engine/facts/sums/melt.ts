/** How much melts when warm things are cooled by it. */

/** Something to be cooled; temperatures in one scale, heat beside that of the same mass of water. */
export interface WarmLoad {
  readonly mass: number;
  readonly heat: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Mass that melts in taking the heat out of all loads; a load that is cold enough takes none.
 * @param melts degrees by which the same mass of water would be cooled by as much heat as melting takes
 */
export const meltFor = (loads: readonly WarmLoad[], melts: number): number =>
  loads.reduce((sum, { mass, heat, from, to }) => sum + mass * heat * Math.max(0, from - to), 0) / melts;
