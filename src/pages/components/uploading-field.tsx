/** A control for files that a browser with script sends piece by piece, and any other with its form. */
import { say } from "../../texts/say.ts";
import { FileField } from "./form.tsx";

export type UploadTarget = { readonly record: string } | { readonly consignment: string };

/** Where the form names the uploads of a control. */
export function uploadedName(control: string): string {
	return `${control}.uploaded`;
}

export function UploadingField({
	target,
	...field
}: Parameters<typeof FileField>[0] & { readonly target: UploadTarget }) {
	return (
		<>
			<FileField {...field} />
			<div
				data-upload-for={field.name}
				data-record={"record" in target ? target.record : undefined}
				data-consignment={"consignment" in target ? target.consignment : undefined}
				data-left={say("upload.left", { count: "{}" })}
				data-done={say("upload.done")}
				data-all-done={say("upload.all-done")}
				data-away={say("upload.away")}
				data-held={say("upload.held")}
				data-failed={say("upload.failed")}
				data-give-up={say("upload.give-up", { file: "{}" })}
			/>
			<script type="module" src="/assets/uploads.js" />
		</>
	);
}
