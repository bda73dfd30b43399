/** The shop's instruments and benches. */
import type { Caller } from "../../access/caller.ts";
import type {
	BenchInput,
	BenchView,
	InstrumentFacts,
	InstrumentInput,
	InstrumentView,
} from "../../contract/benches.ts";
import { insertBench, insertInstrument, listBenches, listInstruments } from "../../database/benches.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";

export async function addInstrument(deps: Deps, caller: Caller, input: InstrumentInput): Promise<InstrumentView> {
	mustBeShop(caller);
	const id = deps.newId("ins");
	await insertInstrument(deps.database, { id, label: input.label, facts: input.facts });
	return { id, ...input };
}

export async function readInstruments(deps: Deps, caller: Caller): Promise<InstrumentView[]> {
	mustBeShop(caller);
	return (await listInstruments(deps.database)).map((row) => ({
		id: row.id,
		label: row.label,
		facts: row.facts as InstrumentFacts,
	}));
}

export async function addBench(deps: Deps, caller: Caller, input: BenchInput): Promise<BenchView> {
	mustBeShop(caller);
	const id = deps.newId("ben");
	await insertBench(deps.database, { id, label: input.label, description: input.description ?? "" });
	return { id, ...input };
}

export async function readBenches(deps: Deps, caller: Caller): Promise<BenchView[]> {
	mustBeShop(caller);
	return (await listBenches(deps.database)).map((row) => ({
		id: row.id,
		label: row.label,
		...(row.description === "" ? {} : { description: row.description }),
	}));
}
