/** Tokens drawn: laid-out rows, tinted by what their words are about. */
import { Box, Text } from 'ink';
import { toAscii } from '../say/ascii.ts';
import { layOut, type Row } from '../say/lay-out.ts';
import type { Token } from '../say/tokens.ts';
import { tintOf } from './colours.ts';

export interface TokensViewProps {
  readonly tokens: readonly Token[];
  /** Terminal columns. */
  readonly width: number;
  readonly color: boolean;
  readonly isAscii: boolean;
}

/** Rows and spans never move once drawn, so their place is their key. */
const RowView = ({ row, color, isAscii }: { row: Row; color: boolean; isAscii: boolean }) => (
  // An empty Text has no height in Ink; one space keeps the row.
  <Text>
    {row.length === 0
      ? ' '
      : row.map((span, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows are drawn once and never reordered
          <Text key={place} {...tintOf(span.tone, color)}>
            {isAscii ? toAscii(span.text) : span.text}
          </Text>
        ))}
  </Text>
);

/** The same words that `say/plain.ts` gives to a pipe. */
export const TokensView = ({ tokens, width, color, isAscii }: TokensViewProps) => (
  <Box flexDirection="column">
    {layOut(tokens, width).map((row, place) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: rows are drawn once and never reordered
      <RowView key={place} row={row} color={color} isAscii={isAscii} />
    ))}
  </Box>
);
