/** Which ration a line names: starter, grower or finisher. */
import type { Told } from './told.ts';

const rations: Readonly<Record<string, string>> = {
  starter: 'starter',
  crumb: 'starter',
  crumbs: 'starter',
  grower: 'grower',
  finisher: 'finisher',
  broiler: 'broiler',
};

/** The ration's plain name, or null. */
export const rationIn = (told: Told): string | null =>
  told.line.tokens.map((token) => rations[token.word]).find((ration) => ration !== undefined) ?? null;
