import { defineConfig } from 'vitest/config'

const browser = ['test/outlets/web/**/*.test.ts', 'src/**/*.browser.test.ts']

export default defineConfig({
  test: {
    testTimeout: 20_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'rooms',
          include: ['src/**/*.test.ts', 'scripts/**/*.test.ts', 'test/**/*.test.ts'],
          exclude: browser,
          // Values are immutable, so files may share one loaded house: loading it 130 times took half the time.
          pool: 'threads',
          isolate: false,
          maxWorkers: 2,
        },
      },
      {
        extends: true,
        // One browser at a time: two would starve each other of the processor and time out.
        // What they wait for is work, on whatever machine; single waits give up sooner and say for what.
        test: {
          name: 'browser',
          include: browser,
          fileParallelism: false,
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
