/** The page on which anyone verifies a receipt. */
import type { Verification } from "../../records/verify/verify-receipt.ts";
import {
	ErrorSummary,
	type FieldErrors,
	FileField,
	Form,
	type FormValues,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { Layout } from "../layout.tsx";
import { VerificationView, type VerifiedFile } from "./verification-view.tsx";
import { verifyWords } from "./words.ts";

export interface Verified {
	readonly verification: Verification;
	readonly file: VerifiedFile;
}

export function VerifyPage({
	formToken,
	values,
	errors,
	verified,
}: {
	readonly formToken: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly verified: Verified | null;
}) {
	return (
		<Layout title={verifyWords("verify.title")}>
			<ErrorSummary errors={errors} />
			{verified === null ? (
				<p class="lead no-print">{verifyWords("verify.lead")}</p>
			) : (
				<VerificationView {...verified} />
			)}
			<div class="no-print">
				{verified === null ? null : <h2>{verifyWords("verify.another")}</h2>}
				<Form action="/verify" formToken={formToken} upload>
					<FileField
						name="receipt"
						label={verifyWords("verify.file")}
						hint={verifyWords("verify.file-hint")}
						values={values}
						errors={errors}
					/>
					<TextArea
						name="key"
						label={verifyWords("verify.key")}
						hint={verifyWords("verify.key-hint")}
						values={values}
						errors={errors}
						rows={3}
					/>
					<fieldset class="field" aria-describedby="printed-hint">
						<legend>{verifyWords("verify.printed")}</legend>
						<p class="hint" id="printed-hint">
							{verifyWords("verify.printed-hint")}
						</p>
						<TextField
							name="size"
							label={verifyWords("verify.printed-size")}
							values={values}
							errors={errors}
							inputMode="numeric"
							width="short"
						/>
						<TextField name="root" label={verifyWords("verify.printed-root")} values={values} errors={errors} />
					</fieldset>
					<Submit label={verifyWords("verify.act")} />
				</Form>
				<div class="note">
					<p>
						<a href="/verify/offline.html" download>
							{verifyWords("verify.offline-link")}
						</a>
					</p>
					<p>{verifyWords("verify.offline-text")}</p>
				</div>
			</div>
		</Layout>
	);
}
