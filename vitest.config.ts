import { defineConfig } from 'vitest/config';

export default defineConfig({ test: { dir: 'tests', setupFiles: ['tests/helpers/seed.ts'] } });
