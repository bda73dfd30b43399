import { defineConfig } from "vitest/config";

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
	},
});
