/** What a problem's wording is made of. */
import type { Problem } from '../../engine/problem.ts';
import { listed } from './listed.ts';

export interface ProblemWords {
  readonly wrong: string;
  readonly next: string | null;
}

export type Data = Problem['data'];
export type Wording = (data: Data) => ProblemWords;

export const text = (data: Data, key: string): string => {
  const value = data[key];
  return value === undefined ? '' : Array.isArray(value) ? listed(value) : String(value);
};

export const say = (wrong: string, next: string | null = null): ProblemWords => ({ wrong, next });

export const meant = (data: Data): string | null =>
  data.suggestion === undefined ? null : `Did you mean ${text(data, 'suggestion')}?`;
