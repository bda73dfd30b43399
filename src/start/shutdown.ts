/** Ends the process cleanly: requests that have begun are answered, then the database stops. */

/** Stops once on SIGINT or SIGTERM; a second signal while draining changes nothing. */
export function stopOnSignals(stop: () => Promise<void>): void {
	let stopping = false;
	const end = () => {
		if (stopping) return;
		stopping = true;
		stop().then(
			() => process.exit(0),
			(error: Error) => {
				console.error(`handover-risk did not stop cleanly: ${error.message}`);
				process.exit(1);
			},
		);
	};
	process.on("SIGINT", end);
	process.on("SIGTERM", end);
}
