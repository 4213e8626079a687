/** A script that completes commands, options and words in a shell. */
import { jsonLine } from '../say/json-line.ts';
import { exits } from '../talk/reply.ts';
import { type Command, wrongUse } from './command.ts';
import * as options from './options.ts';

const shells = ['bash', 'zsh', 'fish'] as const;

/** Loaded when it is wanted, since it needs the list of commands that this one is in. */
const scriptFor = async (shell: (typeof shells)[number]): Promise<readonly string[]> => {
  const { commandPlaces, freePlace } = await import('./completions/vocabulary.ts');
  const { bashScript } = await import('./completions/bash.ts');
  const { zshScript } = await import('./completions/zsh.ts');
  const { fishScript } = await import('./completions/fish.ts');
  const make = { bash: bashScript, zsh: zshScript, fish: fishScript }[shell];
  return make(freePlace(), commandPlaces());
};

export const completions: Command = {
  name: 'completions',
  says: `print what completes penside in a shell: ${shells.join(', ')}`,
  usage: 'penside completions [options] SHELL',
  words: shells,
  options: [options.json],
  run: async (given) => {
    const [word = '', ...others] = given.words;
    const shell = shells.find((each) => each === word);
    if (shell === undefined || others.length > 0)
      return wrongUse(`completions wants the name of a shell: ${shells.join(', ')}`);
    const script = await scriptFor(shell);
    const out =
      given.options.json === true ? [jsonLine({ shell, script: `${script.join('\n')}\n` })] : script;
    return { out, err: [], exit: exits.answered };
  },
};
