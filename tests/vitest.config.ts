import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    exclude: ['node_modules/**', 'dist/**'],
    // The engine is pure, so files may share one loaded copy of it: a fifth of the processor time.
    isolate: false,
    // Every core: half of what runs waits for the browser.
    maxWorkers: '100%',
    // A crowded machine may be ten times slower than an idle one; no test asserts a time.
    testTimeout: 60_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 15_000 } },
  },
});
