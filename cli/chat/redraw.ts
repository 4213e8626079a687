/** What a window of another width has drawn anew, and which rows above the prompt that takes the place of. Pure. */
import { columnsOf } from '../say/columns.ts';
import { drawingFor, layOut } from '../say/lay-out.ts';
import type { Token } from '../say/tokens.ts';
import type { Conversation } from './conversation.ts';
import type { Window } from './window-size.ts';

export interface Redrawing {
  readonly tokens: readonly Token[];
  /** Rows right above the prompt to take away first; 0 where what was drawn stays, and the tokens stand below it. */
  readonly rows: number;
}

/** The prompt, the quiet row under it, and the row that the terminal keeps below both. */
const promptRows = 3;

/**
 * Whether the terminal is known to break rows that became too long for it, and not to cut them off: then it can be told how
 * many rows an old drawing takes now. Each says who it is in a variable of its own.
 */
export const breaksRows = (env: Readonly<Record<string, string | undefined>>): boolean => {
  const isSet = (name: string): boolean => (env[name] ?? '') !== '';
  const { TERM = '', TERM_PROGRAM = '' } = env;
  if (isSet('TMUX')) return true;
  // One inside another: the inner one draws, whatever the outer one has set.
  if (isSet('STY') || /^(screen|linux|putty)/.test(TERM)) return false;
  return (
    /^(tmux|xterm-kitty|xterm-ghostty|foot|alacritty|wezterm)/.test(TERM) ||
    /^(iTerm\.app|Apple_Terminal|WezTerm|ghostty|vscode|tmux)$/.test(TERM_PROGRAM) ||
    ['VTE_VERSION', 'KONSOLE_VERSION', 'WT_SESSION'].some(isSet)
  );
};

/** How the terminal shows what was drawn. */
export interface Shown {
  readonly breaks: boolean;
  readonly asShown: (text: string) => string;
}

/**
 * What is drawn anew of the newest answer, where it holds a picture that another width draws otherwise; null where nothing
 * is. It takes its own place: all of the answer where that is in the window, else what stands from the first picture on,
 * whose rows that have left the window stay as they were. Where its old rows cannot be counted for sure, none that stands is
 * touched, and the pictures alone are drawn again under it.
 */
export const redrawing = (
  { lines }: Pick<Conversation, 'lines'>,
  { columns, rows }: Window,
  { breaks, asShown }: Shown,
): Redrawing | null => {
  const last = lines.at(-1);
  if (last?.t !== 'told') return null;
  const isChanged = (token: Token): boolean =>
    token.t === 'picture' &&
    drawingFor(token, columns).join('\n') !== drawingFor(token, last.width).join('\n');
  const { tokens } = last;
  const first = tokens.findIndex(isChanged);
  if (first === -1) return null;
  const widthsOf = (part: readonly Token[]): readonly number[] =>
    layOut(part, last.width).map((row) => columnsOf(asShown(row.map(({ text }) => text).join('')).trimEnd()));
  const rowsOf = (part: readonly Token[]): number =>
    // An empty row, and the one below the answer, are rows too.
    widthsOf(part).reduce((sum, width) => sum + Math.max(1, Math.ceil(width / columns)), 1);
  const isSure = breaks || widthsOf(tokens).every((width) => width <= columns);
  if (!isSure) return { tokens: tokens.filter(isChanged), rows: 0 };
  const anew = rowsOf(tokens) + promptRows <= rows ? tokens : tokens.slice(first);
  return { tokens: anew, rows: rowsOf(anew) };
};

/** What takes rows above the cursor away, and all below them. */
export const eraseAbove = (rows: number): string => (rows === 0 ? '' : `\x1b[${rows}A\x1b[J`);
