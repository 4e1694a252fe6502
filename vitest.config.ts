import { defineConfig } from 'vitest/config';

const setup = { exclude: ['**/node_modules/**', '**/fixtures/**', 'dist/**'], testTimeout: 60_000 };

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          ...setup,
          name: 'unit',
          // Loading the modules anew for each file took a fifth of the whole run.
          isolate: false,
          include: ['{src,tools,checks,demo}/**/*.test.{ts,tsx}'],
          exclude: [...setup.exclude, 'checks/browser/**'],
        },
      },
      {
        test: {
          ...setup,
          name: 'browser',
          include: ['checks/browser/**/*.test.ts'],
          fileParallelism: false,
          testTimeout: 120_000,
        },
      },
    ],
  },
});
