/** What can be completed where, in the form that every shell's script is made from. */
import type { Option } from '../command.ts';
import { commands } from '../index.ts';
import { freeOptions, help, takesPath } from '../program.ts';

/** What may come after one command, or after none. */
export interface Place {
  /** Empty where no command was typed. */
  readonly name: string;
  readonly says: string;
  readonly words: readonly string[];
  /** Whether its words are paths. */
  readonly takesPaths: boolean;
  readonly options: readonly Option[];
}

/** Where no command was typed yet, or none will be. */
export const freePlace = (): Place => ({
  name: '',
  says: '',
  words: commands.map(({ name }) => name),
  takesPaths: false,
  options: freeOptions,
});

export const commandPlaces = (): readonly Place[] =>
  commands.map(({ name, says, usage, words = [], options }) => ({
    name,
    says,
    words,
    takesPaths: /\b(FOLDER|FILE)\b/.test(usage),
    options: [...options, help],
  }));

/** Options after which a path is completed, and those after which nothing is known to complete. */
export const optionsByValue = (
  places: readonly Place[],
): { readonly paths: readonly string[]; readonly texts: readonly string[] } => {
  const takers = places.flatMap(({ options }) => options).filter(({ takes }) => takes !== null);
  const flags = (which: readonly Option[]): readonly string[] => [
    ...new Set(which.map(({ name }) => `--${name}`)),
  ];
  return { paths: flags(takers.filter(takesPath)), texts: flags(takers.filter((each) => !takesPath(each))) };
};
