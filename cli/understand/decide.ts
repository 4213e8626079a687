/** Whether the best match is taken, asked back about, or turned away. */
import type { Match } from './match.ts';

/**
 * Set by trying on labelled lines: higher asks back more often and is wrong less often. Wording alone has to be surer than
 * wording with an idea behind it that the topic is about, and not one that only goes along with it.
 */
export const bounds = {
  sure: 2.2,
  sureByWording: 4,
  carries: 1,
  lead: 0.8,
  choice: 1.2,
  near: 2.6,
  choices: 3,
};

export interface Decision {
  readonly taken: readonly Match[];
  readonly sure: boolean;
  readonly nearest: readonly string[];
}

/** Decides over matches that are sorted best first. */
export const decide = (matches: readonly Match[]): Decision => {
  const best = matches[0];
  const nearest = matches.slice(0, bounds.choices).map((match) => match.topic.id);
  if (best === undefined || best.score < bounds.choice) return { taken: [], sure: false, nearest };
  const next = matches[1]?.score ?? Number.NEGATIVE_INFINITY;
  const isCarried = best.evidence.some((each) => each.weight >= bounds.carries && each.idea !== 'wording');
  const enough = isCarried ? bounds.sure : bounds.sureByWording;
  const sure = best.score >= enough && best.score - next >= bounds.lead;
  const taken = matches
    .filter((match) => match.score >= bounds.choice && match.score >= best.score - bounds.near)
    .slice(0, bounds.choices);
  return { taken, sure, nearest };
};
