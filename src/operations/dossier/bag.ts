/**
 * Files as a bag, BagIt 1.0 (RFC 8493): what is handed over under `data/`, a manifest of it, a manifest of the files that
 * describe the bag. Hashes are those of `sha256sum`, whose `-c` reads both manifests.
 */
import { type DossierFile, fileOf } from "./dossier-file.ts";

/** RFC 8493 section 2.1.1, two lines. */
const DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

/** @param payload paths below `data/` @param tags further files that describe the bag, such as a guide @param info lines of `bag-info.txt` */
export function bagOf(
	folder: string,
	payload: readonly DossierFile[],
	tags: readonly DossierFile[],
	info: readonly (readonly [name: string, value: string])[],
): DossierFile[] {
	const data = payload.map((file) => ({ ...file, path: `data/${file.path}` })).sort(byPath);
	const octets = data.reduce((sum, { sizeBytes }) => sum + sizeBytes, 0);
	// RFC 8493 section 2.2.2: bytes of the payload, a point, number of its files.
	const lines = [...info, ["Payload-Oxum", `${octets}.${data.length}`] as const];
	const described = [
		fileOf("bag-info.txt", lines.map(([name, value]) => `${name}: ${value}\n`).join("")),
		fileOf("bagit.txt", DECLARATION),
		fileOf("manifest-sha256.txt", manifestOf(data)),
		...tags,
	].sort(byPath);
	const all = [...described, fileOf("tagmanifest-sha256.txt", manifestOf(described)), ...data];
	return all.map((file) => ({ ...file, path: `${folder}/${file.path}` }));
}

function manifestOf(files: readonly DossierFile[]): string {
	return files.map(({ sha256, path }) => `${sha256}  ${path}\n`).join("");
}

function byPath(one: DossierFile, other: DossierFile): number {
	return one.path < other.path ? -1 : 1;
}
