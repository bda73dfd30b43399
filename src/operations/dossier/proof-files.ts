/** An inclusion proof as files, so that `cat` and a hash program climb the tree: each sibling's 32 bytes, named by its side. */
import { type DossierFile, fileOf } from "./dossier-file.ts";

/**
 * `01-left.bin`, `02-right.bin` … from the leaf upwards: on which side of the node so far the sibling stands.
 * Order of the siblings and sides: RFC 9162 section 2.1.3.2.
 */
export function proofFiles(index: number, size: number, proof: readonly string[], folder: string): DossierFile[] {
	return sidesOf(index, size, proof.length).map((side, step) =>
		fileOf(`${folder}/${String(step + 1).padStart(2, "0")}-${side}.bin`, Buffer.from(proof[step] ?? "", "hex")),
	);
}

function sidesOf(index: number, size: number, steps: number): ("left" | "right")[] {
	let node = index;
	let last = size - 1;
	return Array.from({ length: steps }, () => {
		const isLeft = node % 2 === 1 || node === last;
		// A node without a right neighbour moves up until it is one.
		if (isLeft) while (node % 2 === 0 && node !== 0) [node, last] = [node / 2, Math.floor(last / 2)];
		[node, last] = [Math.floor(node / 2), Math.floor(last / 2)];
		return isLeft ? "left" : "right";
	});
}
