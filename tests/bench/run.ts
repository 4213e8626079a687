/** Runs all measurements in turn, each in a Node of its own: `npm run bench`. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

for (const name of ['start-up', 'in-chat', 'many-entries', 'all-rules', 'size', 'season-plan']) {
  const file = fileURLToPath(new URL(`./${name}.ts`, import.meta.url));
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', file], { stdio: 'inherit' });
  process.stdout.write('\n');
  if (status !== 0) throw new Error(`${name} did not come to its end`);
}
