/** A program that writes notes into a state file, for the tests of several writers: `writer.ts <path> <name> <how many>`. */
import { appendEntries } from '../../../../engine/ledger/index.ts';
import { book, measure } from '../../../helpers/ledger-of.ts';

const [path = '', by = '', count = '0'] = process.argv.slice(2);

for (let number = 0; number < Number(count); number += 1) {
  const entry = { kind: 'note', on: '2026-05-02', words: String(number), by };
  const { isWritten, problems } = await appendEntries(path, [entry], book, measure(), {
    tries: 2000,
    pause: 5,
  });
  if (!isWritten) throw new Error(JSON.stringify(problems));
}
