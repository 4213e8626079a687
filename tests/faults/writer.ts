/** A program that writes notes into a state file and says the number of each once it stands: `writer <path> <name> <first> <how many>`. */
import { writeSync } from 'node:fs';
import { appendEntries } from '../../engine/ledger/index.ts';
import { notesOnly, today } from './notes-only.ts';

const [path = '', by = '', first = '0', count = '0'] = process.argv.slice(2);

for (let number = Number(first); number < Number(first) + Number(count); number += 1) {
  const note = { kind: 'note', on: today, words: String(number), by };
  // Eight at once may wait long for one another; none of them may give up.
  const { isWritten, problems } = await appendEntries(
    path,
    [note],
    notesOnly,
    { today, limits: {} },
    { tries: 20_000, pause: 2 },
  );
  writeSync(1, isWritten ? `${number}\n` : `${problems.map(({ code, data }) => `${code} ${data.cause}`)}\n`);
  if (!isWritten) process.exit(1);
}
