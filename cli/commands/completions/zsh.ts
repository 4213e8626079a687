/** Completion for zsh, in the form of its own `_arguments`. */
import type { Option } from '../command.ts';
import { takesPath } from '../program.ts';
import type { Place } from './vocabulary.ts';

/** A text in single quotes; inside a specification, colons and brackets have a meaning of their own. */
const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`;
const inSpec = (text: string): string => text.replace(/[\\:[\]]/g, (sign) => `\\${sign}`);

const optionSpec = (option: Option): string => {
  const { name, takes, says } = option;
  const value = takes === null ? '' : `:${takes}:${takesPath(option) ? '_files' : ''}`;
  return quoted(`--${name}[${inSpec(says)}]${value}`);
};

const wordSpecs = ({ words, takesPaths }: Place): readonly string[] => {
  if (takesPaths) return [quoted('1: :_files')];
  return words.length === 0 ? [] : [quoted(`1: :(${words.join(' ')})`)];
};

const argumentsOf = (specs: readonly string[], indent: string): readonly string[] =>
  ['_arguments', ...specs].map(
    (each, at, { length }) => `${indent}${at === 0 ? '' : '  '}${each}${at === length - 1 ? '' : ' \\'}`,
  );

/** @param free the place where no command was typed */
export const zshScript = (free: Place, commands: readonly Place[]): readonly string[] => [
  '#compdef penside',
  '# Completion of penside in zsh. To use it: penside completions zsh > a folder of $fpath, as _penside',
  '_penside() {',
  '  local context state state_descr line curcontext=$curcontext',
  '  typeset -A opt_args',
  ...argumentsOf(['-C', ...free.options.map(optionSpec), "'1: :->command'", "'*:: :->rest'"], '  '),
  '  case $state in',
  '    command)',
  '      local -a commands=(',
  ...commands.map(({ name, says }) => `        ${quoted(`${name}:${inSpec(says)}`)}`),
  '      )',
  "      _describe 'command' commands",
  '      ;;',
  '    rest)',
  '      case $words[1] in',
  ...commands.flatMap((place) => [
    `        ${place.name})`,
    ...argumentsOf([...place.options.map(optionSpec), ...wordSpecs(place)], '          '),
    '          ;;',
  ]),
  '      esac',
  '      ;;',
  '  esac',
  '}',
  '_penside "$@"',
];
