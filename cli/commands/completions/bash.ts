/** Completion for bash, also for the old one that macOS brings. */
import { optionsByValue, type Place } from './vocabulary.ts';

const flagsOf = ({ options }: Place): string => options.map(({ name }) => `--${name}`).join(' ');

const caseOf = (place: Place): string =>
  [
    `    ${place.name})`,
    `      flags='${flagsOf(place)}'`,
    `      words='${place.words.join(' ')}'`,
    ...(place.takesPaths ? ['      paths=yes'] : []),
    '      ;;',
  ].join('\n');

/** @param free the place where no command was typed */
export const bashScript = (free: Place, commands: readonly Place[]): readonly string[] => {
  const { paths, texts } = optionsByValue([free, ...commands]);
  return `# Completion of penside in bash. To use it: source <(penside completions bash)
_penside() {
  local current previous flags words paths=no
  # A path may have blanks in it, so only line ends part what compgen finds.
  local IFS=$'\\n'
  current=\${COMP_WORDS[COMP_CWORD]}
  previous=\${COMP_WORDS[COMP_CWORD-1]}
  flags='${flagsOf(free)}'
  words=
  # Only the first word can be a command.
  if [ "$COMP_CWORD" -eq 1 ]; then
    words='${free.words.join(' ')}'
  else case \${COMP_WORDS[1]} in
${commands.map(caseOf).join('\n')}
  esac fi
  case $previous in
    ${paths.join('|')}) paths=only ;;
    ${texts.join('|')}) COMPREPLY=(); return ;;
  esac
  if [ "$paths" = only ] || { [ "$paths" = yes ] && [ "\${current#-}" = "$current" ]; }; then
    compopt -o filenames 2>/dev/null
    COMPREPLY=($(compgen -f -- "$current"))
  elif [ "\${current#-}" != "$current" ]; then
    COMPREPLY=($(compgen -W "\${flags// /$IFS}" -- "$current"))
  else
    COMPREPLY=($(compgen -W "\${words// /$IFS}" -- "$current"))
  fi
}
complete -F _penside penside`.split('\n');
};
