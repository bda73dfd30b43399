/** A verification in words: outcome, checks, entries, and what it means. The same on the server's page and offline. */
import { ALL_CHECK_IDS, type AnyCheckId, type CheckOutcome, type Finding } from "../../records/verify/finding.ts";
import type { EntrySummary, Verification } from "../../records/verify/verify-receipt.ts";
import { outcomeWords } from "./outcome-words.ts";
import { verifyWords, verifyWordsIfAny } from "./words.ts";

/** Why nothing else could be looked at. */
const FIRST = ["verify.bag-first", "verify.form-first"] as const;

export interface VerifiedFile {
	readonly name: string;
	readonly sha256: string;
}

export function VerificationView({
	verification,
	file,
}: {
	readonly verification: Verification;
	readonly file: VerifiedFile;
}) {
	const { outcome, checks, about, format, entries } = verification;
	const [verdict, ...covers] = outcomeWords(verification);
	// Without its form nothing else of a receipt can be looked at, nor of a dossier without its bag; that is said once.
	const first = FIRST.find((sentence) => checks.some(({ why }) => why?.sentence === sentence));
	const told = checks.filter(({ why }) => why === undefined || why.sentence !== first);
	return (
		<section class={`verification ${outcome}`} aria-labelledby="outcome">
			<h2 id="outcome" tabIndex={-1}>
				<Mark of={outcome === "verified" ? "passed" : "failed"} /> {verifyWords(`verify.${outcome}`)}
			</h2>
			<p class="lead">{verdict}</p>
			{covers.map((words) => (
				<p key={words}>{words}</p>
			))}
			<LeftOut checks={told} />
			<dl class="facts">
				<dt>{verifyWords("verify.of-file")}</dt>
				<dd>{file.name}</dd>
				<dt>{verifyWords("verify.of-file-sha256")}</dt>
				<dd>
					<Fingerprint hex={file.sha256} />
				</dd>
				{about === null ? null : (
					<>
						<dt>{verifyWords("verify.about")}</dt>
						<dd>
							<code>{about}</code>
						</dd>
					</>
				)}
				{format === null ? null : (
					<>
						<dt>{verifyWords("verify.format")}</dt>
						<dd>
							<code>{format}</code>
						</dd>
					</>
				)}
			</dl>
			<h2>{verifyWords("verify.checks")}</h2>
			<ChecksTable checks={told} />
			{first === undefined ? null : <p>{verifyWords(`${first}-all`)}</p>}
			{entries.length === 0 ? null : <EntriesTable entries={entries} />}
			{outcome === "verified" ? <Meaning isSigned={format !== "handover-risk/receipt/1"} /> : null}
		</section>
	);
}

function Meaning({ isSigned }: { readonly isSigned: boolean }) {
	return (
		<>
			<h2>{verifyWords("verify.meaning")}</h2>
			<ul>
				{isSigned ? <li>{verifyWords("verify.meaning-shows")}</li> : null}
				<li>{verifyWords("verify.meaning-not-true")}</li>
				<li>{verifyWords("verify.meaning-not-who")}</li>
				<li>{verifyWords("verify.meaning-not-all")}</li>
			</ul>
		</>
	);
}

/** What could not be looked at stands beside the outcome, so that nobody takes it for more than it is. */
function LeftOut({ checks }: { readonly checks: readonly Finding[] }) {
	const left = ALL_CHECK_IDS.filter((id) =>
		checks.some((check) => check.id === id && check.outcome === "not-possible"),
	);
	if (left.length === 0) return null;
	return (
		<p>{verifyWords("verify.left-out", { checks: left.map((id) => verifyWords(`verify.check.${id}`)).join(", ") })}</p>
	);
}

function ChecksTable({ checks }: { readonly checks: readonly Finding[] }) {
	return (
		<div class="scroll">
			<table class="stacked checks">
				<thead>
					<tr>
						<th scope="col">{verifyWords("verify.column-check")}</th>
						<th scope="col">{verifyWords("verify.column-outcome")}</th>
						<th scope="col">{verifyWords("verify.column-finding")}</th>
					</tr>
				</thead>
				<tbody>
					{alike(checks).map(([check, ...more]) => (
						<tr key={`${check.id} ${check.outcome}`}>
							<CheckName id={check.id} />
							<td data-label={verifyWords("verify.column-outcome")}>
								<Mark of={check.outcome} /> {verifyWords(`verify.${check.outcome}`)}
							</td>
							<td data-label={verifyWords("verify.column-finding")}>
								{[check, ...more].map((one, place) => (
									<div key={`${one.why?.sentence} ${place}`}>
										<Found check={one} />
									</div>
								))}
							</td>
						</tr>
					))}
				</tbody>
			</table>
		</div>
	);
}

/** One row for all that a check found with one outcome, in the findings' order. */
function alike(checks: readonly Finding[]): (readonly [Finding, ...Finding[]])[] {
	const rows = new Map<string, [Finding, ...Finding[]]>();
	for (const check of checks) {
		const row = rows.get(`${check.id} ${check.outcome}`);
		if (row === undefined) rows.set(`${check.id} ${check.outcome}`, [check]);
		else row.push(check);
	}
	return [...rows.values()];
}

function CheckName({ id }: { readonly id: AnyCheckId }) {
	return (
		<th scope="row">
			{verifyWords(`verify.check.${id}`)}
			<span class="check-about">{verifyWords(`verify.check.${id}.about`)}</span>
		</th>
	);
}

function Found({ check }: { readonly check: Finding }) {
	const details = (["where", "expected", "found"] as const).flatMap((name) => {
		const value = check[name];
		return value === undefined ? [] : [{ name, value }];
	});
	return (
		<>
			{check.why === undefined ? null : verifyWordsIfAny(check.why.sentence, check.why.values)}
			{details.map(({ name, value }) => (
				<span key={name} class="check-detail">
					{verifyWords(`verify.${name}`)}: <code>{value}</code>
				</span>
			))}
		</>
	);
}

const MARKS: Readonly<Record<CheckOutcome, { readonly sign: string; readonly look: string }>> = {
	passed: { sign: "✓", look: "good" },
	failed: { sign: "✗", look: "bad" },
	"not-possible": { sign: "–", look: "open" },
};

/** The words stand beside it. */
function Mark({ of }: { readonly of: CheckOutcome }) {
	const { sign, look } = MARKS[of];
	return (
		<span class={`verdict ${look}`} aria-hidden="true">
			{sign}
		</span>
	);
}

function EntriesTable({ entries }: { readonly entries: readonly EntrySummary[] }) {
	return (
		<>
			<h2>{verifyWords("verify.entries")}</h2>
			<p>{verifyWords("verify.entries-text")}</p>
			<div class="scroll">
				<table class="stacked checks">
					<thead>
						<tr>
							<th scope="col">{verifyWords("verify.column-entry")}</th>
							<th scope="col">{verifyWords("verify.column-what")}</th>
							<th scope="col">{verifyWords("verify.column-time")}</th>
							<th scope="col">{verifyWords("verify.column-fingerprint")}</th>
						</tr>
					</thead>
					<tbody>
						{entries.map(({ index, kind, subject, by, time, fingerprint }) => (
							<tr key={index}>
								<th scope="row">{index}</th>
								<td data-label={verifyWords("verify.column-what")}>
									{verifyWordsIfAny(`verify.kind.${kind}`) ?? kind}
									<span class="check-detail">
										<code class="id">{subject}</code>
									</span>
									<span class="check-detail id">
										{verifyWords("verify.column-by")} <code>{by}</code>
									</span>
								</td>
								<td data-label={verifyWords("verify.column-time")}>{time.replace("T", " ").replace("Z", "")}</td>
								<td data-label={verifyWords("verify.column-fingerprint")}>
									{fingerprint === null ? verifyWords("verify.no-statement") : <Fingerprint hex={fingerprint} />}
								</td>
							</tr>
						))}
					</tbody>
				</table>
			</div>
		</>
	);
}

/** In groups of four, as on the slip. */
function Fingerprint({ hex }: { readonly hex: string }) {
	return <code class="fingerprint">{hex.replace(/.{4}(?=.)/g, "$& ")}</code>;
}
