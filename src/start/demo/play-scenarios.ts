/** Plays the demo's scenarios against a running service, over HTTP only, as its users would. */

export interface DemoStage {
	/** Address of the service, without a slash at the end. */
	readonly url: string;
	readonly setUpLink: string;
	/** Folder for what the demo hands to its parties; null where nobody asked for it. */
	readonly outFolder: string | null;
}

/** A page worth opening, and how to get in. */
export interface DemoLink {
	readonly title: string;
	readonly url: string;
	/** The six-digit code or the name and passphrase, where the page asks. */
	readonly secret?: string;
}

/** Invented; signs in to the demo alone, whose data are thrown away. */
const ACCOUNT = { name: "bench", passphrase: "an invented passphrase" };

/** Plays everything and gives the pages to look at. */
export async function playScenarios(stage: DemoStage): Promise<DemoLink[]> {
	const token = stage.setUpLink.slice(stage.setUpLink.lastIndexOf("/") + 1);
	const answer = await fetch(`${stage.url}/api/v1/set-up`, {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify({ token, ...ACCOUNT }),
	});
	if (!answer.ok) throw new Error(`setting up answered ${answer.status}: ${await answer.text()}`);
	return [{ title: "The repairer's pages", url: stage.url, secret: `${ACCOUNT.name} / ${ACCOUNT.passphrase}` }];
}
