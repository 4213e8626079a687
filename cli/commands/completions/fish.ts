/** Completion for fish. */
import type { Option } from '../command.ts';
import { takesPath } from '../program.ts';
import type { Place } from './vocabulary.ts';

const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

const optionLine = (when: string, option: Option): string => {
  const { name, takes, says } = option;
  // Where a value is wanted -r says so, and -F lets it be a path although no other word is one.
  const value = takes === null ? '' : takesPath(option) ? ' -r -F' : ' -r';
  return `complete -c penside -n ${quoted(when)} -l ${name}${value} -d ${quoted(says)}`;
};

const wordLines = (when: string, { words, takesPaths }: Place): readonly string[] => {
  if (takesPaths) return [`complete -c penside -n ${quoted(when)} -F`];
  return words.length === 0 ? [] : [`complete -c penside -n ${quoted(when)} -a ${quoted(words.join(' '))}`];
};

/** @param free the place where no command was typed */
export const fishScript = (free: Place, commands: readonly Place[]): readonly string[] => {
  const none = '__fish_use_subcommand';
  return [
    '# Completion of penside in fish. To use it: penside completions fish > ~/.config/fish/completions/penside.fish',
    'complete -c penside -f',
    ...commands.map(
      ({ name, says }) => `complete -c penside -n ${quoted(none)} -a ${name} -d ${quoted(says)}`,
    ),
    ...free.options.map((option) => optionLine(none, option)),
    ...commands.flatMap((place) => {
      const when = `__fish_seen_subcommand_from ${place.name}`;
      return [...place.options.map((option) => optionLine(when, option)), ...wordLines(when, place)];
    }),
  ];
};
