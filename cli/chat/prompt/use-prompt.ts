/** Joins the keys to the line being typed. */
import { useStdin, useStdout } from 'ink';
import { useEffectEvent, useLayoutEffect, useRef, useState } from 'react';
import type { Complete } from './completing.ts';
import { type Editor, openEditor } from './line-edits.ts';
import { listenToKeys } from './listen-to-keys.ts';
import { type Act, takeAct } from './prompt-state.ts';

/** The editor as it stands; `ways` are what Tab offers, `onSubmit` gets each line sent, an empty one too, `onLeave` is called when the keeper wants to go. */
export const usePrompt = (
  history: readonly string[],
  ways: Complete,
  onSubmit: (words: string) => void,
  onLeave: () => void,
): Editor => {
  const { stdin } = useStdin();
  const { stdout } = useStdout();
  const [shown, show] = useState(() => ({ ...openEditor(history), isUntouched: true }));
  // Several acts can come in one chunk, before React draws again: the ref is always the latest.
  const latest = useRef(shown);
  const takeAll = useEffectEvent((acts: readonly Act[]): void => {
    for (const act of acts) {
      const { editor, submitted, leaves } = takeAct(latest.current, act, ways);
      latest.current = editor;
      if (submitted !== null) onSubmit(submitted);
      if (leaves) onLeave();
    }
    show(latest.current);
  });
  // A layout effect, because its clean-up still runs when the process is being ended by a signal.
  useLayoutEffect(() => listenToKeys(stdin, stdout, takeAll), [stdin, stdout]);
  return shown;
};
