/** Looks up a code that is seen in a photo: from which checkpoint it comes, and what that does not show. */
import type { OrderView } from "../../contract/orders.ts";
import type { PhotoCodeView } from "../../contract/pictures.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { ErrorSummary, type FieldErrors, type FormValues, Submit, TextField } from "../components/form.tsx";
import { type Crumb, Layout } from "../layout.tsx";

export function PhotoCodePage({
	order,
	crumbs,
	found,
	values,
	errors,
}: {
	readonly order: OrderView;
	readonly crumbs: readonly Crumb[];
	/** Null before a code was asked for. */
	readonly found: readonly PhotoCodeView[] | null;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	return (
		<Layout title={say("photo-code.title")} crumbs={crumbs}>
			<ErrorSummary errors={errors} />
			<p>{say("photo-code.text")}</p>
			<form method="get" action={`/orders/${order.id}/photo-code`}>
				<TextField name="code" label={say("photo-code.field")} values={values} errors={errors} width="short" />
				<Submit label={say("photo-code.act")} />
			</form>
			{found?.length === 0 && (
				<p class="note" role="status">
					{say("photo-code.unknown")}
				</p>
			)}
			{(found ?? []).map((one) => (
				<Found key={`${one.recordId} ${one.treeSize}`} found={one} order={order} />
			))}
			<p class="note">{say("photo-code.limits")}</p>
		</Layout>
	);
}

function Found({ found, order }: { readonly found: PhotoCodeView; readonly order: OrderView }) {
	const other = [order.owner, order.repairer].find(({ id }) => id === found.otherPartyId)?.name;
	return (
		<section role="status">
			<h2>{say("photo-code.found", { time: showTime(found.notBefore) })}</h2>
			<dl class="facts">
				<dt>{say("photo-code.record")}</dt>
				<dd>{found.recordId}</dd>
				<dt>{say("photo-code.other")}</dt>
				<dd>
					{other} ({found.otherPartyId})
				</dd>
				<dt>{say("photo-code.shown-at")}</dt>
				<dd>{showTime(found.shownAt)}</dd>
				<dt>{say("photo-code.size")}</dt>
				<dd>{String(found.treeSize)}</dd>
				<dt>{say("photo-code.root")}</dt>
				<dd>
					<code>{found.root}</code>
				</dd>
			</dl>
			<p class="hint">{say("photo-code.recompute")}</p>
		</section>
	);
}
