/** The characters that pictures are drawn with: one table, so that a place without them can be given plain ones. */

export interface Marks {
  /** What is expected, and the range around it. */
  readonly line: string;
  readonly range: string;
  /** What was measured. */
  readonly seen: string;
  readonly today: string;
  readonly across: string;
  readonly upright: string;
  readonly corner: string;
  /** A full and a lighter bar. */
  readonly full: string;
  readonly light: string;
  readonly pen: string;
  readonly fresh: string;
}

export const drawn: Marks = {
  line: '∙',
  range: '░',
  seen: 'o',
  today: '│',
  across: '─',
  upright: '│',
  corner: '└',
  full: '█',
  light: '░',
  pen: '■',
  fresh: '·',
};

/** For a terminal that shows nothing beyond ASCII. */
export const ascii: Marks = {
  line: '*',
  range: ':',
  seen: 'o',
  today: '|',
  across: '-',
  upright: '|',
  corner: '+',
  full: '#',
  light: '=',
  pen: 'P',
  fresh: '.',
};
