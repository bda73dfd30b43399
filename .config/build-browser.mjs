// Bundles what browsers load: the stylesheet and the little script, into dist/pages/browser/.
import { existsSync, readdirSync } from "node:fs";
import { build } from "esbuild";

const sources = new URL("../src/pages/browser/", import.meta.url).pathname;
if (existsSync(sources)) {
	const entryPoints = readdirSync(sources)
		.filter((name) => /\.(ts|css)$/.test(name))
		.map((name) => sources + name);
	await build({
		entryPoints,
		bundle: true,
		minify: true,
		target: "es2022",
		outdir: new URL("../dist/pages/browser/", import.meta.url).pathname,
		logLevel: "warning",
	});
}
