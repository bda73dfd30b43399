/**
 * The list of what a backup holds, `manifest.json`, form `handover-risk/backup/1`, with the hash of every file; and beside
 * it `manifest.json.sha256`, as `sha256sum -c` reads it.
 *
 *   tables/NAME.copy      rows of a table in the text form of PostgreSQL's COPY, in the order of its key
 *   exhibits/ab/abcdef…   files brought to records, by their SHA-256
 *   keys/…                the key folder, unless it was left out
 */
import { z } from "zod";

export const BACKUP_FORMAT = "handover-risk/backup/1";

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);
const count = z.int().min(0);
/** Names become paths, so they hold nothing that leads elsewhere. */
const sqlName = z.string().regex(/^[a-z_][a-z0-9_]*$/);
const fileName = z.string().regex(/^[A-Za-z0-9_-][A-Za-z0-9._-]*$/);

const manifestShape = z.strictObject({
	$format: z.literal(BACKUP_FORMAT),
	/** The moment that the backup shows, by the database's clock. */
	takenAt: z.iso.datetime(),
	/** Version of the PostgreSQL that it was taken from; any from 15 on takes it. */
	serverVersion: z.string(),
	migrations: z.array(z.strictObject({ name: z.string(), sha256 })),
	/** In an order in which they can be filled: each after those that it refers to. */
	tables: z.array(z.strictObject({ name: sqlName, columns: z.array(sqlName), rows: count, sha256 })),
	exhibits: z.array(z.strictObject({ sha256, sizeBytes: count })),
	/** Null where the key folder was left out. */
	keys: z.array(z.strictObject({ name: fileName, sha256 })).nullable(),
	log: z.strictObject({ size: count, rootSha256: sha256 }),
});

export type Manifest = z.infer<typeof manifestShape>;

/** @throws Error naming what is wrong first */
export function parseManifest(text: string): Manifest {
	let value: unknown;
	try {
		value = JSON.parse(text);
	} catch {
		throw new Error("manifest.json is not JSON");
	}
	const outcome = manifestShape.safeParse(value);
	if (!outcome.success) {
		const issue = outcome.error.issues[0];
		throw new Error(
			`manifest.json is no list of a backup that this release reads: ${issue?.path.join("/")}: ${issue?.message}`,
		);
	}
	return outcome.data;
}

/** The file as written. */
export function manifestText(manifest: Manifest): string {
	return `${JSON.stringify(manifest, null, "\t")}\n`;
}

export const tablePath = (name: string) => `tables/${name}.copy`;
export const keyPath = (name: string) => `keys/${name}`;
