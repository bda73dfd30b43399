import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Files that start processes come first, since they take longest whatever their size: none may be left alone at the end. */
class ProcessesFirst extends BaseSequencer {
	override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
		const order = (file: TestSpecification) =>
			["/tests/start/", "/tests/browser/"].findIndex((room) => file.moduleId.includes(room));
		const sorted = await super.sort(files);
		const later = sorted.filter((file) => order(file) < 0);
		return [...sorted.filter((file) => order(file) >= 0).sort((a, b) => order(a) - order(b)), ...later];
	}
}

export default defineConfig({
	root: new URL("..", import.meta.url).pathname,
	oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
	test: {
		include: ["tests/**/*.test.{ts,tsx}"],
		// Tests share one embedded database server; each file clones its own database from a template.
		globalSetup: ["tests/setup/database-server.ts"],
		testTimeout: 30_000,
		hookTimeout: 120_000,
		maxWorkers: 2,
		// The files of a worker share what they import, since importing the app takes longer than most files' tests.
		isolate: false,
		restoreMocks: true,
		sequence: { sequencer: ProcessesFirst },
	},
});
