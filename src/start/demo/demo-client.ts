/** What the demo's people do, over HTTP: the shop by its API token, an owner by a link and its code. */
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

/** Invented pictures and outputs. */
const DEMO_DATA = fileURLToPath(new URL("../../../demo-data/", import.meta.url));

export type Json = Readonly<Record<string, unknown>>;

/** Something with an id that the service made; further members as the API gives them. */
export interface Made extends Json {
	readonly id: string;
}

/** A file of `demo-data/`. */
export function demoFile(path: string): Promise<Buffer> {
	return readFile(`${DEMO_DATA}${path}`);
}

/** One person, or the shop, speaking to the service. */
export class DemoClient {
	readonly url: string;
	private readonly headers: Readonly<Record<string, string>>;

	constructor(url: string, headers: Readonly<Record<string, string>>) {
		this.url = url;
		this.headers = headers;
	}

	/** Sends JSON and gives the JSON of the answer. @throws Error with what the service said */
	async send(
		method: string,
		path: string,
		body?: unknown,
		headers: Readonly<Record<string, string>> = {},
	): Promise<Made> {
		const answer = await fetch(`${this.url}${path}`, {
			method,
			headers: { ...this.headers, ...(body === undefined ? {} : { "content-type": "application/json" }), ...headers },
			...(body === undefined ? {} : { body: JSON.stringify(body) }),
		});
		return (await readAnswer(answer, `${method} ${path}`)) as Made;
	}

	/** Sends a file's bytes. */
	async sendFile(path: string, bytes: Buffer, headers: Readonly<Record<string, string>> = {}): Promise<Made> {
		const answer = await fetch(`${this.url}${path}`, {
			method: "POST",
			headers: { ...this.headers, "content-type": "application/octet-stream", ...headers },
			body: new Uint8Array(bytes),
		});
		return (await readAnswer(answer, `POST ${path}`)) as Made;
	}

	/** Fetches text: a receipt, a page. */
	async fetchText(path: string): Promise<string> {
		return (await this.fetchBytes(path)).toString("utf8");
	}

	async fetchBytes(path: string): Promise<Buffer> {
		const answer = await fetch(`${this.url}${path}`, { headers: this.headers });
		if (!answer.ok) throw new Error(`GET ${path} answered ${answer.status}: ${await answer.text()}`);
		return Buffer.from(await answer.arrayBuffer());
	}

	/** Brings pictures to a draft and gives them as the draft lists them. */
	async bringPictures(recordId: string, pictures: Readonly<Record<string, string>>): Promise<Json[]> {
		const brought: Json[] = [];
		for (const [view, name] of Object.entries(pictures)) {
			const file = await demoFile(`pictures/${name}`);
			const { sha256 } = await this.sendFile(`/api/v1/records/${recordId}/exhibits?fileName=${name}`, file);
			brought.push({ sha256, view });
		}
		return brought;
	}

	/** Fills a draft, reads a diagnostic output into it where there is one, and seals it. */
	async fillAndSeal(recordId: string, content: Json, output?: string): Promise<void> {
		let { version } = await this.send("GET", `/api/v1/records/${recordId}`);
		const next = (answer: Made) => {
			version = answer.version;
		};
		const match = () => ({ "if-match": `"v${version}"` });
		next(await this.send("PUT", `/api/v1/records/${recordId}`, content, match()));
		if (output !== undefined) {
			const file = await demoFile(`outputs/${output}`);
			const path = `/api/v1/records/${recordId}/import?fileName=${output}&load=load`;
			const imported = await this.sendFile(path, file, match());
			next(imported.record as Made);
		}
		await this.send("POST", `/api/v1/records/${recordId}/seal`, undefined, match());
	}

	/** Makes a link to a record, or without one to where both settle, and enters it as the one who got it. */
	async giveLink(
		orderId: string,
		recordId: string | null,
	): Promise<{ readonly owner: DemoClient; readonly url: string; readonly code: string }> {
		const link = await this.send(
			"POST",
			"/api/v1/links",
			recordId === null ? { scope: "settle", orderId } : { scope: "record", orderId, recordId },
		);
		const [url, code] = [String(link.url), String(link.code)];
		const entered = await fetch(`${this.url}/api/v1/links/enter`, {
			method: "POST",
			headers: { "content-type": "application/json" },
			body: JSON.stringify({ token: url.slice(url.lastIndexOf("/") + 1), code }),
		});
		await readAnswer(entered, "entering a link");
		return { owner: new DemoClient(this.url, { cookie: cookieOf(entered) }), url, code };
	}
}

/** The cookies that an answer sets, to be sent back. */
export function cookieOf(answer: Response): string {
	return answer.headers
		.getSetCookie()
		.map((cookie) => cookie.split(";")[0])
		.join("; ");
}

async function readAnswer(answer: Response, act: string): Promise<unknown> {
	const text = await answer.text();
	if (!answer.ok) throw new Error(`${act} answered ${answer.status}: ${text}`);
	return text === "" ? {} : JSON.parse(text);
}
