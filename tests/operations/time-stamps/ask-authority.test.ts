/** What can come of asking an authority over HTTP (RFC 3161, 3.4): each failure has its code, none hangs. */
import { afterAll, beforeAll, expect, it } from "vitest";
import { askAuthority } from "../../../src/operations/time-stamps/ask-authority.ts";
import { freePort } from "../../../src/start/demo/service-process.ts";
import {
	type AuthorityServer,
	makeTestAuthority,
	serveAuthority,
	type TestAuthority,
} from "../../setup/time-authority.ts";

let authority: TestAuthority;
let server: AuthorityServer;
beforeAll(async () => {
	authority = makeTestAuthority();
	server = await serveAuthority(authority);
});
afterAll(async () => {
	await server.close();
	authority.remove();
});

const never = new AbortController().signal;
const ask = (waitS?: number) => askAuthority(server.url, Uint8Array.of(1, 2, 3), never, waitS);

it("sends the question as it is and gives the answer as it is", async () => {
	server.answer((_question, response) => response.end(Buffer.from([0, 255, 10])));
	expect([...(await ask())]).toEqual([0, 255, 10]);
	expect([...(server.asked.at(-1) ?? [])]).toEqual([1, 2, 3]);
});

it("refuses every status but 200, and follows no redirection", async () => {
	for (const status of [201, 204, 302, 404, 500, 503]) {
		server.answer((_question, response) => response.writeHead(status, { location: server.url }).end());
		const before = server.asked.length;
		await expect(ask()).rejects.toMatchObject({ code: `http-${status}` });
		expect(server.asked.length).toBe(before + 1);
	}
});

it("refuses an answer without end", async () => {
	server.answer((_question, response) => {
		const pour = () => {
			while (!response.destroyed && response.write(Buffer.alloc(65536)));
		};
		response.on("drain", pour);
		pour();
	});
	await expect(ask()).rejects.toMatchObject({ code: "too-large" });
});

it("waits for a limited time: before the answer, and inside it", async () => {
	server.answer(() => {});
	await expect(ask(0.3)).rejects.toMatchObject({ code: "timed-out" });
	server.answer((_question, response) => response.write("begun"));
	await expect(ask(0.3)).rejects.toMatchObject({ code: "timed-out" });
});

it("says that nobody answers, or that the connection broke", async () => {
	const url = `http://127.0.0.1:${await freePort()}/`;
	await expect(askAuthority(url, new Uint8Array(1), never)).rejects.toMatchObject({ code: "unreachable" });
	server.answer((_question, response) => response.destroy());
	await expect(ask()).rejects.toMatchObject({ code: "unreachable" });
});

it("ends at once when it is stopped", async () => {
	server.answer(() => {});
	const stop = new AbortController();
	const asking = askAuthority(server.url, new Uint8Array(1), stop.signal);
	stop.abort(new Error("stopping"));
	await expect(asking).rejects.toThrow("stopping");
});
