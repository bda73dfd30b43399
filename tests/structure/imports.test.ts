/** The import table of DEVELOPERS.md, held: every import of src, type-only ones and .tsx included, points the right way. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { describe, expect, it } from "vitest";

const SRC = new URL("../../src", import.meta.url).pathname;

/** Room → rooms of ours that it may import, and what may come from npm and node. */
const TABLE: Readonly<Record<string, { readonly ours: readonly string[]; readonly others: RegExp }>> = {
	"calculations/statistics": { ours: ["calculations"], others: /^@stdlib\// },
	calculations: { ours: ["calculations"], others: /^$/ },
	catalogue: { ours: ["catalogue", "calculations"], others: /^$/ },
	importers: {
		ours: ["importers", "catalogue", "calculations"],
		others: /^(saxes|csv-parse\/sync|@humanwhocodes\/momoa)$/,
	},
	contract: { ours: ["contract", "calculations", "catalogue", "records/verify", "texts"], others: /^zod$/ },
	"records/verify": { ours: ["records/verify"], others: /^@noble\/(hashes|curves)\// },
	records: { ours: ["records", "calculations", "catalogue"], others: /^(canonicalize|node:crypto)$/ },
	charts: { ours: ["charts", "calculations"], others: /^d3-(scale|shape)$/ },
	texts: { ours: ["texts"], others: /^$/ },
	"faults.ts": { ours: [], others: /^$/ },
	access: { ours: ["access", "records", "faults.ts", "database"], others: /^node:crypto$/ },
	database: { ours: ["database", "records", "faults.ts"], others: /^(pg|pg-copy-streams|node:.*)$/ },
	exhibits: { ours: ["exhibits", "records", "faults.ts"], others: /^node:/ },
	reports: {
		ours: ["reports", "records", "calculations", "catalogue", "charts", "texts"],
		others: /^(pdfkit|fontkit|bidi-js|linebreak|node:(fs|module|path))$/,
	},
	operations: {
		ours: [
			"operations",
			"calculations",
			"catalogue",
			"importers",
			"contract",
			"records",
			"charts",
			"texts",
			"faults.ts",
			"access",
			"database",
			"exhibits",
			"reports",
		],
		others: /^(zod|date-holidays|file-type|@humanwhocodes\/momoa|node:(url|worker_threads|zlib))$/,
	},
	"operations/dossier": {
		ours: ["operations", "contract", "records", "texts", "faults.ts", "access", "database", "exhibits"],
		others: /^node:(fs|stream|url|zlib)$/,
	},
	"operations/mail": {
		ours: ["operations", "contract", "records", "texts", "faults.ts", "access", "database"],
		others: /^(nodemailer\/lib\/(mail-composer|smtp-connection)|node:(net|stream))$/,
	},
	"operations/pictures": {
		ours: ["operations", "contract", "records", "faults.ts", "access", "database", "exhibits"],
		others: /^(sharp|exifreader|node:(child_process|url|zlib))$/,
	},
	"operations/time-stamps": {
		ours: ["operations", "records", "database"],
		others: /^(pkijs|asn1js)$/,
	},
	http: {
		ours: ["http", "operations", "contract", "access", "faults.ts", "records", "texts"],
		others: /^(fastify|@fastify\/.*|zod|@tus\/server|node:(http|stream))$/,
	},
	pages: {
		ours: [
			"pages",
			"operations",
			"contract",
			"access",
			"faults.ts",
			"charts",
			"texts",
			"records",
			"calculations",
			"catalogue",
		],
		others: /^(preact|preact\/hooks|preact-render-to-string|fastify|qrcode|zod|node:(fs|url))$/,
	},
	"pages/browser": {
		ours: ["pages", "records", "records/verify", "texts"],
		others: /^(preact|preact\/hooks|@noble\/hashes\/utils\.js|tus-js-client)$/,
	},
	start: { ours: ["*"], others: /./ },
};
/** Rooms that may be imported for their types only. */
const TYPES_ONLY: Readonly<Record<string, readonly string[]>> = {
	pages: ["calculations"],
	charts: ["calculations"],
	database: ["records"],
};

interface Import {
	readonly file: string;
	readonly target: string;
	readonly typeOnly: boolean;
}

function importsOf(file: string): Import[] {
	const text = readFileSync(join(SRC, file), "utf8");
	return [...text.matchAll(/^(?:import|export)\s+(type\s+)?([^"';]*?from\s+)?"([^"]+)";/gm)].map((match) => ({
		file,
		target: match[3]?.startsWith(".") === true ? relative(SRC, join(SRC, dirname(file), match[3])) : (match[3] ?? ""),
		typeOnly: match[1] !== undefined || /^\{(\s*type [\w]+( as \w+)?,?)+\s*\}\s*from\s+$/.test(match[2] ?? ""),
	}));
}

/** Rooms inside a room, whose imports are narrower. */
const INNER_ROOMS = [
	"calculations/statistics",
	"operations/dossier",
	"operations/mail",
	"operations/pictures",
	"operations/time-stamps",
	"pages/browser",
	"records/verify",
];
const roomOf = (file: string) => INNER_ROOMS.find((room) => file.startsWith(`${room}/`)) ?? file.split("/")[0] ?? "";
const files = readdirSync(SRC, { recursive: true, encoding: "utf8" }).filter((file) => /\.tsx?$/.test(file));
const imports = files.flatMap(importsOf);
const isOurs = ({ target }: Import) => /\.tsx?$/.test(target);

describe("imports", () => {
	it("are found in every room of the table, so that the reader of imports works", () => {
		expect(new Set(files.map(roomOf))).toEqual(new Set(Object.keys(TABLE)));
		expect(imports.filter(isOurs).length).toBeGreaterThan(files.length);
	});
	it("of ours point the way the table says", () => {
		const wrong = imports.filter(isOurs).filter(({ file, target, typeOnly }) => {
			const allowed = TABLE[roomOf(file)]?.ours ?? [];
			const room = target.split("/")[0] ?? "";
			if (!["*", room, roomOf(target)].some((one) => allowed.includes(one))) return true;
			return (TYPES_ONLY[roomOf(file)] ?? []).includes(room) && !typeOnly;
		});
		expect(wrong.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
	});
	it("of others are those that the table names", () => {
		const wrong = imports.filter(
			(found) => !isOurs(found) && !(TABLE[roomOf(found.file)]?.others.test(found.target) ?? false),
		);
		expect(wrong.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
	});
	it("nobody imports start, and no file is an index or a drawer of odds and ends", () => {
		expect(imports.filter(({ file, target }) => target.startsWith("start/") && !file.startsWith("start/"))).toEqual([]);
		expect(files.filter((file) => /(^|\/)(index|utils?|helpers?)\.tsx?$/.test(file))).toEqual([]);
	});
	it("clock, randomness and environment are read in start alone, and a browser reads its own clock", () => {
		const readers = files.filter((file) => {
			if (file.startsWith("start/") || file.startsWith("database/embedded/") || file.startsWith("pages/browser/"))
				return false;
			const text = readFileSync(join(SRC, file), "utf8");
			return /\bDate\.now\(|new Date\(\)|Math\.random\(|process\.env/.test(text);
		});
		expect(readers).toEqual([]);
	});
});
