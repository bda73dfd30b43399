/** A sealed, opened state record as comparisons and the custody line take it. Pure: nothing is looked up. */
import { goodnessOf } from "../../calculations/comparison/goodness.ts";
import { ownCheck } from "../../calculations/comparison/own-check.ts";
import type {
	ComparedState,
	CustodyRecord,
	Goodness,
	ReadingInstrument,
	StateReading,
} from "../../calculations/comparison/types.ts";
import { TYPED_UNITS, type TypedUnit, toReadingUnit } from "../../calculations/quantities.ts";
import { checksOf } from "../../catalogue/checks/checks.ts";
import type { OpenedStatement, StatementInstrument, StatementReading } from "../../records/record-statement.ts";

/** One end of a comparison. */
export function comparedState(statement: OpenedStatement): ComparedState {
	const { identity, setUp, firstPowerOn } = statement;
	return {
		recordId: statement.recordId,
		stateOfItem: statement.state,
		identity: {
			"serial-number": identity.serialNumber,
			uuid: identity.uuid,
			maker: identity.maker,
			model: identity.model,
			firmware: identity.firmware,
		},
		marks: identity.marks ?? [],
		benchId: setUp.benchId,
		driver: setUp.driver,
		firmware: setUp.firmware,
		ambientDegC: setUp.ambient?.unit === "degC" ? setUp.ambient.value : undefined,
		readings: statement.readings.map((reading) => stateReading(reading, statement)),
		controls: controlsOf(statement),
		workDoneBefore: firstPowerOn?.workDoneBefore,
		wetnessSeen: firstPowerOn?.wetnessSeen === true || firstPowerOn?.stopSigns?.includes("liquid") === true,
	};
}

/** What the control card's link ran at in the same slot. */
function controlsOf({ link, setUp }: OpenedStatement): ComparedState["controls"] {
	if (link?.control === undefined) return undefined;
	const end = (value: number) => ({
		values: [value],
		benchId: setUp.benchId,
		instrument: { id: "item", percentOfReading: 0, resolution: 0 },
	});
	return { "link-width": end(link.control.width), "link-speed": end(link.control.speedGTPerS) };
}

/** A record's place on the custody line, with what was good in it. */
export function custodyRecord(statement: OpenedStatement): CustodyRecord {
	return {
		recordId: statement.recordId,
		stage: statement.stage,
		holderId: statement.holderId,
		consignmentId: statement.consignmentId ?? null,
		observedAt: statement.observed.at,
		goodness: {
			...goodnessOf(comparedState(statement), checksOf(statement.itemClass)),
			"state-of-item": goodnessOfState(statement.state),
		},
	};
}

/** The item's state as a whole, on the line beside the checks; what was not to be good says nothing. */
function goodnessOfState(state: OpenedStatement["state"]): Goodness {
	if (state === "not-tested" || state === "unrepaired") return "untested";
	return state === "good" ? "good" : "not-good";
}

type Instruments = readonly StatementInstrument<string | null>[];
type Described = Pick<OpenedStatement, "recordId" | "instruments">;
/** Instruments described in the record itself: `meter-1` of two records need not be one meter. */
const OWN_INSTRUMENT = /^meter-\d$/;

function stateReading(reading: StatementReading<string | null>, { recordId, instruments }: Described): StateReading {
	const values = reading.values?.map(({ value }) => value);
	const limited = reading.limitLow !== undefined || reading.limitHigh !== undefined;
	return {
		check: reading.check,
		condition: reading.condition,
		provenance: reading.provenance,
		definition: reading.definition && ownCheck(reading.check, reading.definition),
		definitionName: reading.definition?.name,
		unit: reading.values?.[0]?.unit,
		leadsNulled: reading.leadsNulled,
		values,
		instrument: instrumentOf(reading, instruments, recordId),
		trials: reading.trials,
		successes: reading.successes,
		count: reading.count,
		exposure: reading.exposure && { amount: reading.exposure.value, unit: reading.exposure.unit },
		limits: limited ? { low: reading.limitLow, high: reading.limitHigh } : undefined,
		notTested: reading.notTested?.reason,
	};
}

/** The instrument's accuracy at this reading; only its id where its facts are of another quantity or range. */
function instrumentOf(
	{ instrumentId, values }: StatementReading<string | null>,
	instruments: Instruments,
	recordId: string,
): ReadingInstrument | undefined {
	if (instrumentId === undefined) return undefined;
	const bare = { id: OWN_INSTRUMENT.test(instrumentId) ? `${recordId} ${instrumentId}` : instrumentId };
	const facts = instruments.find((instrument) => instrument.id === instrumentId);
	if (facts?.unit === undefined || !Object.hasOwn(TYPED_UNITS, facts.unit)) return bare;
	const unit = facts.unit as TypedUnit;
	const inReadingUnit = (value: number | undefined) =>
		value === undefined ? undefined : toReadingUnit(value, unit).value;
	const rangeHigh = inReadingUnit(facts.rangeHigh) ?? Number.POSITIVE_INFINITY;
	const covers = (values ?? []).every(
		(value) => value.unit === TYPED_UNITS[unit].unit && Math.abs(value.value) <= rangeHigh,
	);
	if (!covers) return bare;
	const { percentOfReading, counts, resolution } = facts;
	return { ...bare, percentOfReading, counts, resolution: inReadingUnit(resolution) };
}
