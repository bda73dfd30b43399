/** Sends a page. */
import type { FastifyReply } from "fastify";
import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";

export function sendPage(reply: FastifyReply, page: VNode, status = 200): FastifyReply {
	return reply
		.status(status)
		.type("text/html; charset=utf-8")
		.header("Cache-Control", "no-store")
		.serializer((text: unknown) => String(text))
		.send(`<!doctype html>${renderToString(page)}`);
}
