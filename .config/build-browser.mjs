// Bundles what browsers load, into dist/pages/browser/: the stylesheet and the little script, and the offline page.
import { createHash } from "node:crypto";
import { readdirSync, writeFileSync } from "node:fs";
import { build } from "esbuild";
import { verify } from "../dist/texts/english/verify.js";

const sources = new URL("../src/pages/browser/", import.meta.url).pathname;
const built = new URL("../dist/pages/browser/", import.meta.url).pathname;
const settings = {
	bundle: true,
	minify: true,
	target: "es2022",
	charset: "utf8",
	jsx: "automatic",
	jsxImportSource: "preact",
	logLevel: "warning",
};
await build({
	...settings,
	entryPoints: readdirSync(sources)
		.filter((name) => /\.(ts|css)$/.test(name))
		.map((name) => sources + name),
	outdir: built,
	format: "esm",
});

// The offline page is one file that fetches nothing: script and style stand in it, and its policy admits these alone.
const inline = async (entryPoint) => {
	const { outputFiles } = await build({ ...settings, entryPoints: [sources + entryPoint], write: false });
	const text = outputFiles[0].text.trim();
	return { text, hash: `'sha256-${createHash("sha256").update(text).digest("base64")}'` };
};
const script = await inline("verify-offline/verify-offline.tsx");
const style = await inline("style.css");
const policy = [
	"default-src 'none'",
	`script-src ${script.hash}`,
	`style-src ${style.hash}`,
	"base-uri 'none'",
	"form-action 'none'",
].join("; ");
writeFileSync(
	`${built}verify-offline.html`,
	`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${verify["verify.title"]} · handover-risk</title>
<style>${style.text}</style>
</head>
<body class="site">
<noscript>${verify["verify.needs-script"]}</noscript>
<div id="page"></div>
<script>${script.text}</script>
</body>
</html>
`,
);
