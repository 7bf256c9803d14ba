import { createRequire } from 'node:module';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const require = createRequire(import.meta.url);

/** The longest first: begun last, they would run alone while the other core idles. */
class BrowserFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isSlow = ({ moduleId }: TestSpecification): boolean => moduleId.includes('/browser/');
    const sorted = await super.sort(files);
    return [...sorted.filter(isSlow), ...sorted.filter((file) => !isSlow(file))];
  }
}

// The transform reads experimentalDecorators and emitDecoratorMetadata from tsconfig.json; a test
// under tests/tooling holds that it emits what typeorm and type-graphql read.
export default defineConfig({
  // Vite would take graphql's `module` build, everything in node_modules its `main` one: two realms.
  resolve: { alias: [{ find: /^graphql$/, replacement: require.resolve('graphql') }] },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/support/postgresServer.ts'],
    setupFiles: ['tests/support/setUp.ts'],
    sequence: { sequencer: BrowserFirst },
    pool: 'forks',
    // Loading the program anew for each of 150 files took longer than the tests. Files share a
    // worker and its modules, so a test keeps its state in what it opens, never in a module.
    isolate: false,
    // Two cores: a third worker would only wait, and the test server needs its share.
    maxWorkers: 2,
    // A page in a browser that shares two cores takes its time.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 15_000 } },
    // A test that leaves its clock or its environment changed does not reach the next one.
    restoreMocks: true,
    unstubEnvs: true,
  },
});
