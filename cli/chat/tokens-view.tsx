/** Tokens drawn: as laid-out rows for the eye, as a list of sentences for a screen reader. */
import { Box, Text, useIsScreenReaderEnabled } from 'ink';
import { layOut, type Row } from '../say/lay-out.ts';
import { readOut } from '../say/read-out.ts';
import type { Token } from '../say/tokens.ts';
import { tintOf } from './colours.ts';
import { inRuns } from './in-runs.ts';

export interface TokensViewProps {
  readonly tokens: readonly Token[];
  /** Terminal columns. */
  readonly width: number;
  readonly color: boolean;
}

/** Rows and spans never move once drawn, so their place is their key. */
const RowView = ({ row, color }: { readonly row: Row; readonly color: boolean }) => (
  // An empty Text has no height in Ink; one space keeps the row.
  <Text>
    {row.length === 0
      ? ' '
      : row.map((span, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows are drawn once and never reordered
          <Text key={place} {...tintOf(span.tone, color)}>
            {span.text}
          </Text>
        ))}
  </Text>
);

const Heard = ({ tokens }: { readonly tokens: readonly Token[] }) => (
  <Box flexDirection="column">
    {inRuns(tokens).map((run) =>
      run.isList ? (
        <Box key={run.at} flexDirection="column" aria-role="list">
          {run.tokens.map((token, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: tokens are drawn once and never reordered
            <Box key={place} aria-role="listitem">
              <Text>{readOut(token)}</Text>
            </Box>
          ))}
        </Box>
      ) : (
        run.tokens.map((token) => <Text key={run.at}>{readOut(token)}</Text>)
      ),
    )}
  </Box>
);

/** The same words for both; see `say/parts.ts`. */
export const TokensView = ({ tokens, width, color }: TokensViewProps) =>
  useIsScreenReaderEnabled() ? (
    <Heard tokens={tokens} />
  ) : (
    <Box flexDirection="column">
      {layOut(tokens, width).map((row, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are drawn once and never reordered
        <RowView key={place} row={row} color={color} />
      ))}
    </Box>
  );
