/** Joins the keys to the line being typed. */
import { useStdin, useStdout } from 'ink';
import { useEffectEvent, useLayoutEffect, useRef, useState } from 'react';
import { listenToKeys } from './listen-to-keys.ts';
import { type Act, type Editor, openEditor, takeAct } from './prompt-state.ts';

/** The editor as it stands; `onSubmit` gets each line sent, `onEmpty` is called for an empty one, `onLeave` is called when the keeper wants to go. */
export const usePrompt = (
  history: readonly string[],
  onSubmit: (words: string) => void,
  onEmpty: () => void,
  onLeave: () => void,
): Editor => {
  const { stdin } = useStdin();
  const { stdout } = useStdout();
  const [shown, show] = useState(() => openEditor(history));
  // Several acts can come in one chunk, before React draws again: the ref is always the latest.
  const latest = useRef(shown);
  const takeAll = useEffectEvent((acts: readonly Act[]): void => {
    for (const act of acts) {
      const { editor, submitted, leaves } = takeAct(latest.current, act);
      latest.current = editor;
      if (submitted !== null) onSubmit(submitted);
      else if (act.t === 'submit') onEmpty();
      if (leaves) onLeave();
    }
    show(latest.current);
  });
  // A layout effect, because its clean-up still runs when the process is being ended by a signal.
  useLayoutEffect(() => listenToKeys(stdin, stdout, takeAll), [stdin, stdout]);
  return shown;
};
