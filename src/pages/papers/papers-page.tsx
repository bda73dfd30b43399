/** An order's reports and dossiers: each edition with who gets it, what stands in it and what does not. */
import { type DossierEdition, EDITIONS, type Edition } from "../../contract/report.ts";
import { leftOut } from "../../operations/report/left-out.ts";
import { LANGUAGES } from "../../texts/language.ts";
import { say } from "../../texts/say.ts";
import { Layout } from "../layout.tsx";

export interface Papers {
	readonly orderId: string;
	readonly itemName: string;
	/** Of the log; null where nothing of the order is sealed. */
	readonly size: number | null;
	/** Legs of the journey: a carrier is told of one. */
	readonly legs: readonly { readonly leg: number; readonly from: string; readonly to: string }[];
	/** Whether the carrier's edition is the reader's to hand on. */
	readonly isShop: boolean;
}

export function PapersPage({ orderId, itemName, size, legs, isShop }: Papers) {
	const editions = EDITIONS.filter((edition) => isShop || edition !== "carrier");
	return (
		<Layout
			title={say("papers.title")}
			crumbs={[{ href: `/orders/${orderId}${isShop ? "" : "/comparison"}`, label: itemName }]}
		>
			<p>{say("papers.text")}</p>
			{size === null ? (
				<p class="note">{say("papers.none-sealed")}</p>
			) : (
				<>
					<p class="hint">{say("papers.as-of", { size: String(size) })}</p>
					<table class="stacked papers">
						<thead>
							<tr>
								{(["edition", "who", "files"] as const).map((column) => (
									<th key={column} scope="col">
										{say(`papers.${column}`)}
									</th>
								))}
							</tr>
						</thead>
						<tbody>
							{editions.map((edition) => (
								<EditionRow key={edition} edition={edition} orderId={orderId} size={size} legs={legs} />
							))}
						</tbody>
					</table>
					<p class="note">{say("papers.caution")}</p>
					<p>
						<a href={`/orders/${orderId}/photo-code`}>{say("photo-code.check")}</a>
					</p>
					<p class="hint">
						<a href="/verify">{say("papers.verify-page")}</a> {say("papers.verify")}
					</p>
				</>
			)}
		</Layout>
	);
}

function EditionRow({
	edition,
	orderId,
	size,
	legs,
}: Pick<Papers, "orderId" | "legs"> & { readonly edition: Edition; readonly size: number }) {
	return (
		<tr>
			<th scope="row">{say(`papers.${edition}`)}</th>
			<td data-label={say("papers.who")}>
				{say(`papers.${edition}.who`)}
				<details>
					<summary>{say("papers.left-out")}</summary>
					<ul>
						{leftOut(edition).map((what) => (
							<li key={what}>{what}</li>
						))}
					</ul>
				</details>
			</td>
			<td data-label={say("papers.files")}>
				{edition === "carrier" ? (
					<CarrierFiles orderId={orderId} size={size} legs={legs} />
				) : (
					<PartyFiles edition={edition} orderId={orderId} size={size} />
				)}
			</td>
		</tr>
	);
}

function PartyFiles({
	edition,
	orderId,
	size,
}: {
	readonly edition: DossierEdition;
	readonly orderId: string;
	readonly size: number;
}) {
	const query = `?edition=${edition}&at=${size}`;
	return (
		<>
			<InLanguages label={say("papers.report")} href={`/api/v1/orders/${orderId}/report.pdf${query}`} />
			<InLanguages label={say("papers.dossier")} href={`/api/v1/orders/${orderId}/dossier.zip${query}`} />
		</>
	);
}

/** One report and one text for each leg. */
function CarrierFiles({ orderId, size, legs }: Pick<Papers, "orderId" | "legs"> & { readonly size: number }) {
	return (
		<>
			{legs.map((leg) => {
				const query = `at=${size}&leg=${leg.leg}`;
				return (
					<div key={leg.leg}>
						{say("papers.carrier-leg", leg)}
						<InLanguages
							label={say("papers.report")}
							href={`/api/v1/orders/${orderId}/report.pdf?edition=carrier&${query}`}
						/>
						<InLanguages label={say("papers.carrier-text")} href={`/orders/${orderId}/carrier-text?${query}`} />
						<p>
							<a href={`/orders/${orderId}/carrier-photos?${query}`}>{say("carrier-photos.link")}</a>
						</p>
					</div>
				);
			})}
			<span class="hint">{say("papers.no-dossier")}</span>
		</>
	);
}

/** A file in each language that it can be had in, each under its own name. */
function InLanguages({ label, href }: { readonly label: string; readonly href: string }) {
	return (
		<p>
			{label}:{" "}
			{LANGUAGES.map((language, place) => (
				<span key={language}>
					{place > 0 && ", "}
					<a href={`${href}&language=${language}`} hreflang={language}>
						<span lang={language}>{say(`papers.language.${language}`)}</span>
					</a>
				</span>
			))}
		</p>
	);
}
