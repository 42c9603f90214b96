import { defineConfig } from 'vitest/config';

export default defineConfig({
  // The first condition makes packages find each other as sources, so that tests need no build; the others are the
  // defaults of the bundler below, which giving any replaces.
  ssr: { resolve: { conditions: ['longrein-src', 'module', 'node', 'development|production'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
