/** The live rows: a plain word and the line being typed with the terminal's own cursor in it, and at times a quiet row under it. */
import { Text, useCursor } from 'ink';
import { tintOf } from '../colours.ts';
import type { Window } from '../window-size.ts';
import { type Editor, graphemes } from './line-edits.ts';
import { cutMark, quietRow } from './quiet-row.ts';
import { windowOf } from './window-of.ts';

export interface PromptProps {
  readonly editor: Editor;
  readonly window: Window;
  readonly color: boolean;
  readonly isAscii: boolean;
  /** What is still being worked on, where that takes long. */
  readonly busy: string | null;
}

/** A window with fewer rows has none to spare: Ink wipes one that is filled. */
const rowsForQuiet = 4;

/** Draws the prompt; the cursor is real, so that input methods find it. */
export const Prompt = ({ editor, window, color, isAscii, busy }: PromptProps) => {
  const { setCursorPosition } = useCursor();
  const { line, at, search } = editor;
  const label = search === null ? 'say: ' : 'look for: ';
  const typed = search === null ? line : graphemes(search.words);
  const room = Math.max(1, window.columns - label.length);
  const { text, column } = windowOf(typed, search === null ? at : typed.length, room, cutMark(isAscii));
  setCursorPosition({ x: label.length + column, y: 0 });
  // One column is kept free: a full row makes some terminals begin another.
  const quiet = quietRow(editor, window.columns - 1, isAscii) ?? busy;
  return (
    <>
      <Text wrap="truncate">
        <Text {...tintOf('aside', color)}>{label}</Text>
        {text}
      </Text>
      {quiet === null || window.rows < rowsForQuiet ? null : (
        <Text wrap="truncate" {...tintOf('aside', color)}>
          {quiet}
        </Text>
      )}
    </>
  );
};
