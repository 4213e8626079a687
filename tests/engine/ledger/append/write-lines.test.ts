/** The last step onto the disk: short writes are carried on, and a disk that fails leaves the file as it was. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeAll } from '../../../../engine/ledger/append/write-lines.ts';

describe('writeAll', () => {
  it('goes on when the disk takes only a few bytes at a time', () => {
    const written: number[] = [];
    writeAll(1, Uint8Array.from([1, 2, 3, 4, 5, 6, 7]), (_, bytes, offset) => {
      const some = bytes.slice(offset, offset + 3);
      written.push(...some);
      return some.length;
    });
    expect(written).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });
});

describe.runIf(process.platform === 'linux')('writeLines', () => {
  it('cuts the file back when the disk is full in the middle of a line', () => {
    const path = join(mkdtempSync(join(tmpdir(), 'penside-')), 'flock.jsonl');
    const before = `${'x'.repeat(900)}\n`;
    writeFileSync(path, before);
    const writer = new URL('../../../../engine/ledger/append/write-lines.ts', import.meta.url).pathname;
    const script = `import { writeLines } from '${writer}';
      process.on('SIGXFSZ', () => {});
      try { writeLines('${path}', ['y'.repeat(500)]); } catch (error) { console.log(error.code); }`;
    // a limit on the size of files stands for a full disk: 1024 bytes may be written, and no more
    const run = `ulimit -f 1; exec ${process.execPath} --import tsx --input-type=module -e "$0"`;
    const said = execFileSync('bash', ['-c', run, script], { encoding: 'utf8' });
    expect(said.trim()).toBe('EFBIG');
    expect(readFileSync(path, 'utf8')).toBe(before);
  });
});
