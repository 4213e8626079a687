/** The one live row: a plain word and the line being typed, with the terminal's own cursor in it. */
import { Text, useCursor, useIsScreenReaderEnabled, useStdout } from 'ink';
import { useLayoutEffect } from 'react';
import { tintOf } from '../colours.ts';
import type { Editor } from './prompt-state.ts';
import { windowOf } from './window-of.ts';

export interface PromptProps {
  readonly editor: Editor;
  /** Terminal columns. */
  readonly width: number;
  readonly color: boolean;
}

const label = 'say: ';

/** Draws the prompt; the cursor is real, so that input methods and screen readers find it. */
export const Prompt = ({ editor, width, color }: PromptProps) => {
  const { setCursorPosition } = useCursor();
  const { stdout } = useStdout();
  const isHeard = useIsScreenReaderEnabled();
  const { text, column } = windowOf(editor.line, editor.at, Math.max(1, width - label.length));
  const x = label.length + column;
  setCursorPosition({ x, y: 0 });
  // In screen-reader mode Ink 6.8 leaves the cursor after the last character, whatever useCursor asked for.
  useLayoutEffect(() => {
    if (isHeard) stdout.write(`\x1b[${x + 1}G`);
  });
  return (
    <Text wrap="truncate">
      <Text {...tintOf('aside', color)}>{label}</Text>
      {text}
    </Text>
  );
};
