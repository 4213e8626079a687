import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    dir: 'tests',
    globalSetup: ['tests/helpers/learned.ts'],
    setupFiles: ['tests/helpers/same-draws.ts'],
    // No module keeps state, so test files may share them: loading them once each takes a quarter of the time.
    isolate: false,
    // The long seasons beside the rest, also on a machine with two cores.
    maxWorkers: 2,
  },
});
