/** Why a board must not get power (again): a stop sign, or wetness; null where neither was noted. */
export function powerStop({
	firstPowerOn,
}: {
	readonly firstPowerOn?:
		| { readonly stopSigns?: readonly string[] | undefined; readonly wetnessSeen?: boolean | undefined }
		| undefined;
}): "sign" | "cell" | "wet" | null {
	const signs = firstPowerOn?.stopSigns ?? [];
	if (signs.includes("swollen-cell")) return "cell";
	if (signs.length > 0) return "sign";
	return firstPowerOn?.wetnessSeen === true ? "wet" : null;
}
