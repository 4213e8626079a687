/** Whether the likeliest topic is taken, asked back about, or the line turned away. */
import type { Match, Ranking } from './match.ts';

/**
 * Set by leaving one voice after the other out: higher asks back more often and is wrong less often. Nothing is offered that is
 * far less likely than the best.
 */
const bounds = { sure: 0.55, away: 0.4, choice: 0.03, choices: 3, hazard: 0.1 };

export interface Decision {
  readonly taken: readonly Match[];
  readonly sure: boolean;
  readonly nearest: readonly string[];
  /** A danger likely enough to say its caution, whatever else is said. */
  readonly hazard: string | undefined;
}

/** Decides over a ranking that is sorted likeliest first. */
export const decide = ({ matches, outside, hazard }: Ranking): Decision => {
  const danger = hazard !== null && hazard.chance >= bounds.hazard ? hazard.id : undefined;
  const [best] = matches;
  const nearest = matches.slice(0, bounds.choices).map((match) => match.topic.id);
  if (best === undefined || (outside > best.score && outside >= bounds.away))
    return { taken: [], sure: false, nearest, hazard: danger };
  const taken = matches.filter((match) => match.score >= bounds.choice).slice(0, bounds.choices);
  return { taken, sure: best.score >= bounds.sure, nearest, hazard: danger };
};
