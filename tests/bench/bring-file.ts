/** Brings a file to a running service by resumable upload, piece by piece. */
export interface Access {
	readonly url: string;
	readonly token: string;
}

/** @param target `record` or `consignment` with its id @returns where the upload stands */
export async function bringFile(
	{ url, token }: Access,
	target: Readonly<Record<string, string>>,
	sizeBytes: number,
	pieces: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
): Promise<string> {
	const headers = { authorization: `Bearer ${token}`, "tus-resumable": "1.0.0" };
	const metadata = Object.entries(target).map(([key, value]) => `${key} ${Buffer.from(value).toString("base64")}`);
	const made = await fetch(`${url}/api/v1/exhibits`, {
		method: "POST",
		headers: { ...headers, "upload-length": String(sizeBytes), "upload-metadata": metadata.join(",") },
	});
	if (made.status !== 201) throw new Error(`an upload: ${made.status} ${await made.text()}`);
	const place = made.headers.get("location") ?? "";
	let at = 0;
	for await (const piece of pieces) {
		const answer = await fetch(url + place, {
			method: "PATCH",
			headers: { ...headers, "upload-offset": String(at), "content-type": "application/offset+octet-stream" },
			body: new Uint8Array(piece),
		});
		if (answer.status !== 204) throw new Error(`an upload: ${answer.status} ${await answer.text()}`);
		at += piece.length;
	}
	return place;
}
