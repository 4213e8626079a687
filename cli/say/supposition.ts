/** A supposition in words: what is taken to be otherwise, and by how much. */

import { known } from '../../engine/index.ts';
import type { Supposition } from '../../engine/types.ts';
import { sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';

/** What a keeper said is supposed, and how it was put. */
export interface SaidSupposed {
  readonly what: string;
  readonly fact?: string;
  readonly figure?: string;
  readonly value: number | string;
  readonly unit: string | null;
  readonly adds: boolean;
  readonly share?: 'goes' | 'is';
}

const sign = (value: number): string => (value < 0 ? '−' : '+');

/** A step as it was said: "+4 °F", "−10". */
const sayStep = (speech: Speech, { value, unit }: SaidSupposed): string => {
  const symbol = unit === null ? '' : (speech.book.units.byId[unit]?.many ?? ` ${unit}`);
  return `${sign(Number(value))}${Math.abs(Number(value))}${symbol}`;
};

const sayPercent = (ratio: number): string => `${Math.round(ratio * 100)} %`;

/** "night low 38 °F", "birds +20", "feed price times 2", "half of the birds lost" as a share. */
export const saySupposition = (speech: Speech, said: SaidSupposed, over: Supposition): string => {
  const of = over.group === undefined ? '' : ` of the ${over.group}`;
  const what = `${said.what}${of}`;
  if (said.share === 'goes' && over.adds) return `${said.value} ${what}`;
  if (said.share === 'goes') return `${what} ${sayPercent(1 - Number(over.value))}`;
  if (over.times === true) return `${what} times ${over.value}`;
  if (over.adds) return `${what} ${sayStep(speech, said)}`;
  const id = said.fact ?? said.figure ?? '';
  const unit =
    said.figure === undefined
      ? (known.facts.find((fact) => fact.id === said.fact)?.unit ?? null)
      : (speech.book.figures[said.figure]?.unit ?? null);
  return `${what} ${sayValue(speech, { value: over.value, unit }, id)}`;
};
