/**
 * Errors that PCI Express devices report about a link, by bit of the status word and by every name that kernels and
 * register dumps have printed for them. Source: published, Linux include/trace/events/ras.h (v3.14) for the bits,
 * Documentation/ABI/testing/sysfs-bus-pci-devices-aer_stats and pciutils' ls-ecaps.c for the names; names without a bit
 * here have one in newer kernels that was not read.
 */
export type AerKind = "correctable" | "uncorrectable";

interface AerError {
	readonly kind: AerKind;
	readonly bit: number | null;
	readonly id: string;
	readonly names: readonly string[];
}

const error = (kind: AerKind, bit: number | null, id: string, ...names: string[]): AerError => ({
	kind,
	bit,
	id,
	names,
});

const ERRORS: readonly AerError[] = [
	error("correctable", 0, "receiver", "RxErr", "Receiver Error"),
	error("correctable", 6, "bad-tlp", "BadTLP", "Bad TLP"),
	error("correctable", 7, "bad-dllp", "BadDLLP", "Bad DLLP"),
	error("correctable", 8, "replay-rollover", "Rollover", "RELAY_NUM Rollover"),
	error("correctable", 12, "replay-timer", "Timeout", "Replay Timer Timeout"),
	error("correctable", 13, "advisory-nonfatal", "NonFatalErr", "AdvNonFatalErr", "Advisory Non-Fatal"),
	error("correctable", null, "corrected-internal", "CorrIntErr", "Corrected Internal Error"),
	error("correctable", null, "header-overflow", "HeaderOF", "Header Log Overflow"),
	error("uncorrectable", 4, "dlp", "DLP", "Data Link Protocol"),
	error("uncorrectable", null, "surprise-down", "SDES", "Surprise Down Error"),
	error("uncorrectable", 12, "poisoned", "TLP", "Poisoned TLP"),
	error("uncorrectable", 13, "flow-control", "FCP", "Flow Control Protocol"),
	error("uncorrectable", 14, "completion-timeout", "CmpltTO", "Completion Timeout"),
	error("uncorrectable", 15, "completer-abort", "CmpltAbrt", "Completer Abort"),
	error("uncorrectable", 16, "unexpected-completion", "UnxCmplt", "Unexpected Completion"),
	error("uncorrectable", 17, "rx-overflow", "RxOF", "Receiver Overflow"),
	error("uncorrectable", 18, "malformed", "MalfTLP", "Malformed TLP"),
	error("uncorrectable", 19, "ecrc", "ECRC"),
	error("uncorrectable", 20, "unsupported-request", "UnsupReq", "Unsupported Request"),
	error("uncorrectable", null, "access-control", "ACSViol", "ACS Violation"),
	error("uncorrectable", null, "uncorrectable-internal", "UncorrIntErr", "Uncorrectable Internal Error"),
	error("uncorrectable", null, "blocked-tlp", "BlockedTLP", "MC Blocked TLP"),
	error("uncorrectable", null, "atomic-blocked", "AtomicOpBlocked", "AtomicOp Egress Blocked"),
	error("uncorrectable", null, "tlp-prefix-blocked", "TLPBlockedErr", "TLP Prefix Blocked Error"),
	error("uncorrectable", null, "poisoned-blocked", "PoisonTLPBlocked"),
	error("uncorrectable", null, "undefined", "Undefined"),
];

/** Check id of an error by the name printed; null for a name that is none of these. */
export function aerCheckByName(kind: AerKind, name: string): string | null {
	const found = ERRORS.find((candidate) => candidate.kind === kind && candidate.names.includes(name));
	return found === undefined ? null : `aer-${kind}-${found.id}`;
}

/** Bits that are set in a status word, and which of them are known. */
export function decodeAerStatus(
	kind: AerKind,
	status: number,
): { readonly bits: readonly number[]; readonly checks: readonly string[]; readonly unknownBits: readonly number[] } {
	const bits = Array.from({ length: 32 }, (_, bit) => bit).filter((bit) => ((status >>> bit) & 1) === 1);
	const known = (bit: number) => ERRORS.find((candidate) => candidate.kind === kind && candidate.bit === bit);
	return {
		bits,
		checks: bits.flatMap((bit) => {
			const found = known(bit);
			return found === undefined ? [] : [`aer-${kind}-${found.id}`];
		}),
		unknownBits: bits.filter((bit) => known(bit) === undefined),
	};
}
