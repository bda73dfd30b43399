/** The recordings of a leg, and the form that brings one. */
import type { FastifyRequest } from "fastify";
import { callerOf, formTokenFor } from "../../access/callers.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { RecordingView } from "../../contract/transit-recordings.ts";
import { lasting } from "../../operations/transit-recordings/time-scale.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit, TextArea } from "../components/form.tsx";
import { UploadingField } from "../components/uploading-field.tsx";
import { IndicatorNote } from "./indicator-note.tsx";
import { RecordingLayout } from "./recording-layout.tsx";

const PENDING = {
	"being-read": "recording.is-read",
	stopped: "recording.stopped",
	refused: "recording.was-refused",
} as const;

export function RecordingsPage(props: {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly recordings: readonly RecordingView[];
	readonly consignmentId: string;
	readonly address: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const { request, order, recordings, address, ...field } = props;
	return (
		<RecordingLayout request={request} order={order} title={say("recording.title")}>
			<ErrorSummary errors={field.errors} />
			<p>{say("recording.text")}</p>
			{recordings.length === 0 && <p>{say("recording.none")}</p>}
			<ul>
				{recordings.map((recording) => (
					<li key={recording.id}>
						<a
							href={
								recording.result === null && recording.pending === null
									? `${address}/${recording.id}/columns`
									: `${address}/${recording.id}`
							}
						>
							{recording.fileName}
						</a>
						, {showTime(recording.broughtAt)}:{" "}
						{recording.result === null
							? say(recording.pending === null ? "recording.waits" : PENDING[recording.pending.status])
							: say("recording.in-short", {
									events: recording.result.eventsFound,
									time: lasting(recording.result.durationS),
								})}
					</li>
				))}
			</ul>
			{callerOf(request).kind === "account" && (
				<section id="bring">
					<h2>{say("recording.bring")}</h2>
					<Form action={address} formToken={formTokenFor(request)} upload>
						<UploadingField
							target={{ consignment: props.consignmentId }}
							{...field}
							name="file"
							label={say("recording.file")}
							hint={say("recording.file-hint")}
						/>
						<TextArea {...field} name="pasted" label={say("recording.pasted")} hint={say("recording.pasted-hint")} />
						<Submit label={say("recording.look")} />
					</Form>
				</section>
			)}
			<IndicatorNote />
		</RecordingLayout>
	);
}
