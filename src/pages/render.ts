/** Sends a page. A page with errors is rendered twice: its list of errors stands before the fields that it names. */
import type { FastifyReply } from "fastify";
import { h, type VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { FieldLabels } from "./components/form.tsx";
import { LogMark, logMarkOf } from "./log-mark.tsx";

export function sendPage(reply: FastifyReply, page: VNode, status = 200): FastifyReply {
	const marked = h(LogMark.Provider, { value: logMarkOf(reply.request) }, page);
	const labelled = h(FieldLabels.Provider, { value: new Map<string, string>() }, marked);
	if (status === 400) renderToString(labelled);
	return reply
		.status(status)
		.type("text/html; charset=utf-8")
		.header("Cache-Control", "no-store")
		.serializer((text: unknown) => String(text))
		.send(`<!doctype html>${renderToString(labelled)}`);
}
