/** Fills a wording of the rulebook with its values. */
import type { Sentence, Shown } from '../../engine/types.ts';
import { sayValue } from './quantity.ts';
import type { Speech } from './speech.ts';

/** The template with every {name} said. A name without a value is a bug of the rulebook and stands as it is. */
export const fill = (speech: Speech, template: string, values: Readonly<Record<string, Shown>>): string =>
  template.replace(/\{([^}]+)\}/g, (whole, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    return value === undefined ? whole : sayValue(speech, value, name);
  });

export const phrase = (speech: Speech, { template, values }: Sentence): string =>
  fill(speech, template, values);

/** First letter large, for a wording that begins a line. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
