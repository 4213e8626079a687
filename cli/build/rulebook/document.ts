/** The whole rulebook as one readable document, for somebody who judges what it says and reads no code. */
import type { Figure, Rulebook, Source } from '../../../engine/types.ts';
import { capital } from '../../say/phrase.ts';
import { sayUnfilled } from '../../say/rulebook-page.ts';
import { saySourceInFull } from '../../say/source.ts';
import type { Speech } from '../../say/speech.ts';
import { linkTo, placeOf, withLinks, withoutBrackets } from './anchors.ts';
import { figurePart } from './figure-part.ts';
import { questionPart } from './rule-part.ts';

/** Sources that an adviser would look at first: nobody has published what they say, or nobody has looked it up. */
const wanting: readonly Source['standing'][] = ['judgement', 'memory', 'practice'];

const restsOn = ({ sources }: Rulebook, { values }: Figure, standing: Source['standing']): boolean =>
  values.some(({ source }) => sources[source]?.standing === standing);

const areaOf = ({ id }: Figure): string => capital((id.split('/')[0] ?? id).replaceAll('-', ' '));

const introduction = [
  '# The rulebook',
  '',
  'Everything that penside goes by: the questions it answers with their rules, the figures these rest on, how each value is',
  'worked out, and who says so. It is written from the files in [rules](rules) by `npm run rulebook`; change those, not this.',
  '',
  'If you advise keepers of poultry and have come to check it, thank you. A rule says its sentence when all of its conditions',
  'hold. Words in [square brackets] are filled in from the flock. Where several rules of a question hold, one that goes before',
  'others speaks. A link on a value leads to how it is worked out, one on a figure to its number and source. Figures are in the',
  'units of the United States, with metric ones behind. Every rule and figure has a name, such as `pasture/lowest-night`:',
  'please give it when you tell us what is wrong.',
  '',
];

/** What nobody has published or looked up, so that a review can begin there. */
const reviewFirst = (speech: Speech): readonly string[] => {
  const figures = Object.values(speech.book.figures);
  const said: Readonly<Record<string, string>> = {
    judgement: 'Own judgement, a rule of thumb',
    memory: 'From memory, not looked up again',
    practice: 'Common practice, no source',
  };
  return [
    '## Where to look first',
    '',
    `Of ${figures.length} figures these have no published source that was read.`,
    '',
    ...wanting.flatMap((standing) => {
      const found = figures.filter((figure) => restsOn(speech.book, figure, standing));
      return [
        `**${said[standing]}** (${found.length}): ${found.map(({ id }) => linkTo('figure', id, id)).join(', ')}.`,
        '',
      ];
    }),
  ];
};

const contents = (speech: Speech): readonly string[] => [
  '## Contents',
  '',
  'Questions:',
  '',
  ...askable(speech).map(({ id, offer }) => `- ${linkTo('question', id, offer)}`),
  '',
  'Then the [figures](#figures), [how values are worked out](#how-values-are-worked-out), [what is taken for granted](#what-is-taken-for-granted) and the [sources](#sources).',
  '',
];

/** Questions of the trade; those about the answers themselves have no rules. */
const askable = ({ book }: Speech) => Object.values(book.questions).filter(({ kind }) => kind !== 'about');

const figuresPart = (speech: Speech): readonly string[] => {
  const figures = Object.values(speech.book.figures);
  return [
    '## Figures',
    '',
    ...[...new Set(figures.map(areaOf))].flatMap((area) => [
      `### ${area}`,
      '',
      ...figures.filter((figure) => areaOf(figure) === area).flatMap((figure) => figurePart(speech, figure)),
    ]),
  ];
};

const factsPart = (speech: Speech): readonly string[] => [
  '## How values are worked out',
  '',
  ...Object.values(speech.book.facts)
    .toSorted((a, b) => (a.name.toLowerCase() < b.name.toLowerCase() ? -1 : 1))
    .map(
      ({ id, name, how }) =>
        `- ${placeOf('fact', id)}**${capital(name)}**: ${withoutBrackets(sayUnfilled(withLinks(speech), how))}.`,
    ),
  '',
];

const assumptionsPart = (speech: Speech): readonly string[] => [
  '## What is taken for granted',
  '',
  'For want of a record, and said under every answer that rests on it:',
  '',
  ...Object.values(speech.book.assumptions).map((wording) => `- ${capital(sayUnfilled(speech, wording))}.`),
  '',
];

const sourcesPart = (speech: Speech): readonly string[] => [
  '## Sources',
  '',
  ...Object.keys(speech.book.sources).map(
    (id) => `- ${placeOf('source', id)}${saySourceInFull(speech, id).replace(/^Source: /, '')}`,
  ),
];

/** The document in Markdown. */
export const rulebookDocument = (book: Rulebook): string => {
  // No day of today's: every date is said with its year.
  const speech: Speech = { book, system: 'us', currency: '$', today: '0000-01-01' };
  return `${[
    ...introduction,
    ...reviewFirst(speech),
    ...contents(speech),
    '## Questions and rules',
    '',
    ...askable(speech).flatMap((question) => questionPart(speech, question)),
    ...figuresPart(speech),
    ...factsPart(speech),
    ...assumptionsPart(speech),
    ...sourcesPart(speech),
  ].join('\n')}\n`;
};
