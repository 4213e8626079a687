/** Where a rule or a figure comes from: in a word beside it, or in full. */
import type { Speech } from './speech.ts';

/** What a source's standing means, in words. */
const standings: Readonly<Record<string, string>> = {
  published: 'read in the source',
  relayed: 'read where another relays it',
  memory: 'from memory, not verified',
  practice: 'common practice, no source',
  judgement: 'own judgement, a rule of thumb',
  derived: 'worked out from other figures',
};

/** A source as it is named beside a figure. */
export const saySource = (speech: Speech, id: string): string => {
  const source = speech.book.sources[id];
  if (source === undefined) return id;
  switch (source.standing) {
    case 'judgement':
    case 'practice':
      return source.title.toLowerCase();
    case 'memory':
      return `${source.author}, from memory`;
    case 'derived':
      return 'worked out';
    default:
      return `${source.author}, ${source.year}`;
  }
};

/** Author, title, year, where it can be found, and how far it can be trusted. */
export const saySourceInFull = (speech: Speech, id: string): string => {
  const source = speech.book.sources[id];
  if (source === undefined) return `Source: ${id}.`;
  const standing = standings[source.standing] ?? source.standing;
  // Where there is nothing published the title says so itself.
  if (standing === source.title.toLowerCase()) return `Source: ${standing}.`;
  const year = source.year === 'undated' ? '' : `, ${source.year}`;
  return `Source: ${source.author}, ${source.title}${year}; ${source.where}; ${standing}.`;
};
