/** Whether the likeliest topic is taken, asked back about, or the line turned away. */
import type { Match, Ranking } from './match.ts';

/**
 * Set by leaving whole voices out. `lead` is by how much the likeliest topic must be likelier than the next to be taken at once:
 * a wider one asks back more often and is wrong less often; of the ways to be sure (the chance itself, the lead, their ratio)
 * the lead is right most often for the same share of wrong ones. A line is turned
 * away where that it lies outside is likely enough, by itself and `beside` the best: what is turned away still offers
 * the nearest. Nothing is offered that is hardly likely.
 */
const bounds = { lead: 0.43, away: 0.1, beside: 0.22, choice: 0.02, choices: 3, hazard: 0.1 };

export interface Decision {
  readonly taken: readonly Match[];
  readonly sure: boolean;
  /** What a line that is turned away may be meant for all the same, likeliest first. */
  readonly nearest: readonly Match[];
  /** A danger likely enough to say its caution, whatever else is said. */
  readonly hazard: string | undefined;
}

/** Decides over a ranking that is sorted likeliest first. */
export const decide = ({ matches, outside, hazard }: Ranking): Decision => {
  const danger = hazard !== null && hazard.chance >= bounds.hazard ? hazard.id : undefined;
  const [best, next] = matches;
  const likely = matches.filter((match) => match.score >= bounds.choice).slice(0, bounds.choices);
  const sure = best !== undefined && best.score - Math.max(next?.score ?? 0, outside) >= bounds.lead;
  if (best === undefined || (!sure && outside > best.score * bounds.beside && outside >= bounds.away))
    return { taken: [], sure: false, nearest: likely, hazard: danger };
  return { taken: likely, sure, nearest: [], hazard: danger };
};
