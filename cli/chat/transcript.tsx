/** All that was said and told; each line is written once and then belongs to the terminal's own scrollback. */
import { Box, Static, Text } from 'ink';
import { clean } from '../say/clean.ts';
import { wrap } from '../say/wrap.ts';
import { tintOf } from './colours.ts';
import type { Line } from './conversation.ts';
import { TokensView } from './tokens-view.tsx';

export interface TranscriptProps {
  readonly lines: readonly Line[];
  readonly width: number;
  readonly color: boolean;
  readonly isAscii: boolean;
}

/** Before the keeper's own words, so that they can be told from an answer without colour. */
const said = 'said: ';

const SaidView = ({ words, width, color }: { words: string; width: number; color: boolean }) => (
  <Text {...tintOf('aside', color)}>{wrap(said + clean(words), width, said.length).join('\n')}</Text>
);

/** The transcript, one item a line, a blank row after each thing told. */
export const Transcript = ({ lines, width, color, isAscii }: TranscriptProps) => (
  <Static items={[...lines]}>
    {(line) =>
      line.t === 'said' ? (
        <SaidView key={line.id} words={line.words} width={width} color={color} />
      ) : (
        <Box key={line.id} flexDirection="column">
          <TokensView tokens={line.tokens} width={line.width} color={color} isAscii={isAscii} />
          <Text> </Text>
        </Box>
      )
    }
  </Static>
);
