/** The layout of the shop's pages: with the way to benches and out. */
import type { FastifyRequest } from "fastify";
import type { ComponentChildren } from "preact";
import { formTokenFor } from "../../access/callers.ts";
import { say } from "../../texts/say.ts";
import { type Crumb, Layout } from "../layout.tsx";

export function ShopLayout(props: {
	readonly request: FastifyRequest;
	readonly title: string;
	readonly crumbs?: readonly Crumb[];
	readonly spine?: ComponentChildren;
	readonly head?: ComponentChildren;
	readonly wide?: boolean;
	readonly children: ComponentChildren;
}) {
	return (
		<Layout
			title={props.title}
			crumbs={props.crumbs ?? []}
			wide={props.wide ?? false}
			{...(props.spine === undefined ? {} : { spine: props.spine })}
			head={props.head}
			actions={
				<nav class="actions" aria-label={say("shop.nav")}>
					<a href="/benches">{say("shop.benches")}</a>
					<a href="/catalogue">{say("catalogue.title")}</a>
					<a href="/stock">{say("stock.title")}</a>
					<a href="/learning">{say("learning.title")}</a>
					<form method="post" action="/sign-out">
						<input type="hidden" name="formToken" value={formTokenFor(props.request)} />
						<button type="submit" class="plain">
							{say("shop.sign-out")}
						</button>
					</form>
				</nav>
			}
		>
			{props.children}
		</Layout>
	);
}
