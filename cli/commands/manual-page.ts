/** The manual page in the language of `man`, from the same definitions that read the command line. */
import type { Command, Option } from './command.ts';
import { commands } from './index.ts';
import { environment, exitCodes, files, forms, freeOptions, inOneLine } from './program.ts';

/** Signs beyond ASCII that the texts have, by the names that every formatter knows. */
const signs: Readonly<Record<string, string>> = {
  '–': '\\[en]',
  '−': '\\[mi]',
  '’': '\\[cq]',
  '°': '\\[de]',
};

/** A text of one line so that no formatter takes anything in it for a request; a hyphen stays one that can be typed. */
const inRoff = (text: string): string =>
  text
    .replaceAll('\\', '\\[rs]')
    .replaceAll('-', '\\-')
    .replace(
      /[^ -~]/g,
      (sign) =>
        signs[sign] ?? `\\[u${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`,
    )
    .replace(/^(?=[.'])/, '\\&');

const bold = (text: string): string => `\\fB${inRoff(text)}\\fR`;
const italic = (text: string): string => `\\fI${inRoff(text)}\\fR`;
const section = (name: string): string => `.SH ${name}`;
/** A name and, set in below it, what it means. */
const term = (name: string, says: string): readonly string[] => ['.TP', name, inRoff(says)];

const optionTerm = ({ name, takes, says }: Option): readonly string[] =>
  term(`${bold(`--${name}`)}${takes === null ? '' : ` ${italic(takes)}`}`, says);

const commandPart = ({ usage, says, options }: Command): readonly string[] => [
  `.SS "${inRoff(usage).replaceAll('"', '\\(dq')}"`,
  inRoff(`${says}.`),
  ...options.flatMap(optionTerm),
];

/** The page as rows of roff, in ASCII. */
export const manualPage = (): readonly string[] => [
  '.TH PENSIDE 1 "" "penside" "User Commands"',
  section('NAME'),
  inRoff(`penside - ${inOneLine}`).replace(' \\- ', ' \\- '),
  section('SYNOPSIS'),
  ...[...forms, ...commands].flatMap(({ usage }, at) => [...(at === 0 ? [] : ['.br']), inRoff(usage)]),
  section('DESCRIPTION'),
  'Answers short questions in plain words over the records of a flock. Each answer shows its rule, its figure and the source.',
  'Nothing leaves the machine unless fetching forecasts is switched on.',
  ...forms.flatMap(({ usage, says }) => term(bold(usage), says)),
  section('OPTIONS'),
  ...freeOptions.flatMap(optionTerm),
  section('COMMANDS'),
  ...commands.flatMap(commandPart),
  section('"EXIT STATUS"'),
  ...exitCodes.flatMap(({ code, says }) => term(bold(String(code)), says)),
  section('ENVIRONMENT'),
  ...environment.flatMap(({ name, says }) => term(bold(name), says)),
  section('FILES'),
  ...files.flatMap(({ name, says }) => term(italic(name), says)),
  section('EXAMPLES'),
  ...[
    ['penside "can they go out tonight"', 'an answer, with its reasons'],
    ['penside tell "lost 2 whites to a hawk"', 'a record'],
    ['penside list feed > feed.csv', 'the feed given, for a spreadsheet'],
    ['penside check --short', 'as a hook before a commit: nothing said, and 0, where nothing is wrong'],
  ].flatMap(([name = '', says = '']) => term(bold(name), says)),
];
