/** The dates of a claim about a leg, from what the order's records say and what someone noted; and noting it. */
import type { Caller } from "../../access/caller.ts";
import { type CivilDate, daysBetween } from "../../calculations/civil-date.ts";
import { type ClaimEvents, claimPeriods, type Holidays } from "../../calculations/claims/claim-periods.ts";
import type { Damage, Regime } from "../../calculations/claims/claim-rule.ts";
import { suggestRegime } from "../../calculations/claims/suggest-regime.ts";
import { CLAIM_RULES } from "../../catalogue/claim-rules.ts";
import { CLAIMANTS } from "../../catalogue/claimants.ts";
import type { LegClaimInput, LegClaimView } from "../../contract/leg-claim.ts";
import type { NoticeView } from "../../contract/notices.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import { claimCaseOf, saveClaimCase } from "../../database/claim-cases.ts";
import { noticesOf } from "../../database/notices.ts";
import { ownerOfOrder } from "../../database/orders.ts";
import { Fault, fault } from "../../faults.ts";
import { isWorseOnArrival } from "../../records/arrived-worse.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { publicHolidays } from "../calculations/holidays.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { readConsignment } from "../orders/consignments.ts";
import { readOrder } from "../orders/read-orders.ts";
import { type SealedRecord, sealedRecordsOfOrder } from "../records/record-views.ts";
import { legCover } from "./leg-cover.ts";
import { localDate, offsetMinutesOf } from "./local-date.ts";
import { watchedPeriods } from "./watched-periods.ts";

/** What the records at the two ends of a leg say; null where none is sealed. */
interface Ends {
	readonly departure: OpenedStatement | null;
	readonly arrival: OpenedStatement | null;
}

/** Replaces what is noted. @throws version-stale; bad-input for a set of holidays that is not known */
export async function saveLegClaim(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	version: number,
	noted: LegClaimInput,
): Promise<LegClaimView> {
	mustBeShop(caller);
	const leg = await readConsignment(deps, caller, consignmentId);
	if (noted.holidays !== undefined) publicHolidays(noted.holidays, []);
	const isNewest = await deps.database.transaction(async (transaction) => {
		await ownerOfOrder(transaction, leg.orderId);
		return saveClaimCase(transaction, consignmentId, version, noted);
	});
	if (!isNewest) throw fault("version-stale");
	return readLegClaim(deps, caller, consignmentId);
}

export async function readLegClaim(deps: Deps, caller: Caller, consignmentId: string): Promise<LegClaimView> {
	const leg = await readConsignment(deps, caller, consignmentId);
	const [order, records] = await Promise.all([
		readOrder(deps, caller, leg.orderId),
		sealedRecordsOfOrder(deps.database, leg.orderId),
	]);
	return legClaim(deps, order, leg, records);
}

/** The same, from an order and those of its sealed records that count. */
export async function legClaim(
	deps: Deps,
	order: OrderView,
	leg: ConsignmentView,
	records: readonly SealedRecord[],
	speaker: Speaker = ENGLISH,
): Promise<LegClaimView> {
	const [row, notices] = await Promise.all([claimCaseOf(deps.database, leg.id), noticesOf(deps.database, leg.id)]);
	const statementOf = (stage: SealedRecord["view"]["stage"]) =>
		records.find(({ view }) => view.consignmentId === leg.id && view.stage === stage && view.supersededBy === null)
			?.statement ?? null;
	const ends = { departure: statementOf("departure"), arrival: statementOf("arrival") };
	const noted = (row?.plain ?? {}) as LegClaimInput;
	const sent = notices.map(({ plain }) => (plain as NoticeView).sentOn).sort()[0];
	const claim = claimOf(order, leg, ends, noted, sent, deps.now(), speaker);
	const version = row?.version ?? 0;
	return { ...claim, question: questionOf(version, claim.outerDamage, ends, leg.direction === "to-owner"), version };
}

function questionOf(
	version: number,
	outerDamage: LegClaimView["outerDamage"],
	{ departure, arrival }: Ends,
	isToOwner: boolean,
): LegClaimView["question"] {
	const isWorse = arrival !== null && isWorseOnArrival(arrival.state, departure?.state, isToOwner);
	if (version > 0 || outerDamage === "seen" || isWorse) return "in-question";
	return arrival === null ? "open" : "nothing-seen";
}

function claimOf(
	order: OrderView,
	leg: ConsignmentView,
	{ departure, arrival }: Ends,
	noted: LegClaimInput,
	/** Day on which the first notice that is kept was sent. */
	noticeSent: CivilDate | undefined,
	now: Date,
	speaker: Speaker,
): Omit<LegClaimView, "version" | "question"> {
	// As noted for the carrier, else as either end weighed it.
	const massKg = leg.facts.parcelMassKg ?? weighedKg(departure) ?? weighedKg(arrival) ?? null;
	const countryOf = (partyId: string) => (partyId === order.owner.id ? order.owner.country : order.repairer.country);
	const [from, to] = [countryOf(leg.consignorId), countryOf(leg.consigneeId)];
	const suggestion = suggestRegime({
		from,
		to,
		mode: leg.facts.mode,
		byPost: noted.byPost ?? null,
		airLeg: noted.airLeg ?? null,
	});
	const regime = noted.regime ?? suggestion.regime;
	const outerDamage = (arrival?.parcel?.outerDamage as LegClaimView["outerDamage"] | undefined) ?? "not-recorded";
	const damage = noted.damage ?? (outerDamage === "seen" ? "apparent" : "not-apparent");
	const events = eventsOf(leg, arrival, noticeSent, noted);
	const today = localDate(now, offsetAt(leg, arrival));
	const holidays = holidaysFor(noted.holidays, to, events);
	const damageBasis = noted.damage === undefined ? "suggested" : "chosen";
	const foundFor = (kind: Damage) => periodsFor(regime, kind, noted.wilful, events, holidays, today, speaker);
	const found = foundFor(damage);
	const { periods } = found;
	const other = otherReading(damage, periods, foundFor);
	const claimants = regime === null ? undefined : CLAIMANTS[regime];
	const { toRepairer, toOwner } = order.terms.carrierContract;
	const contractor = leg.direction === "to-repairer" ? toRepairer : toOwner;
	return {
		consignmentId: leg.id,
		orderId: order.id,
		noted,
		suggestion: { regime: suggestion.regime, steps: [...suggestion.steps] },
		regime,
		regimeBasis: noted.regime === undefined ? "suggested" : "chosen",
		outerDamage,
		damage,
		damageBasis,
		consignorId: leg.consignorId,
		consigneeId: leg.consigneeId,
		contractorId: contractor === "owner" ? order.owner.id : order.repairer.id,
		claimants:
			claimants === undefined
				? null
				: {
						who: claimants.who,
						document: claimants.source.document,
						locator: claimants.source.locator,
						standing: claimants.source.standing,
					},
		events: events as Record<string, string>,
		holidays:
			holidays === null
				? null
				: {
						country: noted.holidays?.country ?? to,
						region: noted.holidays?.region ?? null,
						dates: [...holidays.dates],
						doubtful: [...holidays.doubtful],
						basis: noted.holidays === undefined ? "suggested" : "chosen",
					},
		today,
		periods,
		otherReading: other,
		nextRuleId: nextOf(watchedPeriods({ periods, otherReading: other, damageBasis }))?.ruleId ?? null,
		germanMultimodal: leg.facts.mode === "mixed" && (from === "DE" || to === "DE") && regime !== "de-hgb",
		notes: found.notes,
		cautions: found.cautions,
		cover: legCover(order.item, leg, massKg, regime, noted.currencyPerSdr, events.takenOver ?? today),
	};
}

/** Of the closed parcel, as a record tells it; undefined where it tells none that a parcel can have. */
function weighedKg(statement: OpenedStatement | null): number | undefined {
	const mass = statement?.parcel?.mass;
	return mass?.unit === "kg" && mass.value > 0 ? mass.value : undefined;
}

const OTHER: Readonly<Partial<Record<Damage, Damage>>> = { apparent: "not-apparent", "not-apparent": "apparent" };

/** What applies beside, if whether the damage could be seen at delivery is answered the other way. */
function otherReading(
	damage: Damage,
	periods: LegClaimView["periods"],
	foundFor: (damage: Damage) => Pick<LegClaimView, "periods">,
): LegClaimView["otherReading"] {
	const other = OTHER[damage];
	if (other === undefined) return null;
	const known = new Set(periods.map(({ ruleId }) => ruleId));
	const more = foundFor(other).periods.filter(({ ruleId }) => !known.has(ruleId));
	return more.length === 0 ? null : { damage: other, periods: more };
}

function periodsFor(
	regime: Regime | null,
	damage: Damage,
	wilful: boolean | undefined,
	events: ClaimEvents,
	holidays: Holidays | null,
	today: CivilDate,
	{ speak }: Speaker,
): Pick<LegClaimView, "periods" | "notes" | "cautions"> {
	const rules = CLAIM_RULES.filter((rule) => rule.regime === regime && rule.damage.includes(damage));
	const judged = speak(claimPeriods({ rules, damage, wilful, events, holidays }));
	const [notes, cautions] = [[...judged.validity.notes], [...judged.cautions]];
	if (judged.status === "not-assessed") return { periods: [], notes: [...notes, judged.reason.message], cautions };
	const periods = judged.result.periods as unknown as Omit<LegClaimView["periods"][number], "leftDays">[];
	const leftDays = (safe: CivilDate | null) => (safe === null ? null : daysBetween(today, safe));
	return {
		periods: periods.map((one) => ({ ...one, leftDays: leftDays(one.safeDate as CivilDate | null) })),
		notes,
		cautions,
	};
}

/** What the leg and the arrival record say, beside what was noted; dates are local to where each was told. */
function eventsOf(
	leg: ConsignmentView,
	arrival: OpenedStatement | null,
	noticeSent: CivilDate | undefined,
	{ dates = {} }: LegClaimInput,
): ClaimEvents {
	const { noticeReceived: _, ...noted } = dates;
	const { dispatchedAt, deliveredAt, inHandAt } = leg.facts;
	const claimed = (time: { readonly at: string; readonly offsetMinutes: number } | undefined) =>
		time === undefined ? undefined : localDate(new Date(time.at), time.offsetMinutes);
	const all = {
		posted: dispatchedAt?.slice(0, 10),
		takenOver: dispatchedAt?.slice(0, 10),
		delivered: deliveredAt?.slice(0, 10) ?? claimed(arrival?.parcel?.delivered),
		inHand: inHandAt?.slice(0, 10) ?? claimed(arrival?.parcel?.inHand),
		discovered: claimed(arrival?.observed),
		noticeSent,
		...noted,
	};
	return Object.fromEntries(Object.entries(all).filter(([, date]) => date !== undefined));
}

/** Minutes east of UTC at the place of delivery, by whatever tells of it; UTC where nothing does. */
function offsetAt({ facts }: ConsignmentView, arrival: OpenedStatement | null): number {
	const told = facts.deliveredAt ?? facts.inHandAt;
	if (told !== undefined) return offsetMinutesOf(told);
	const seen = arrival?.parcel?.delivered ?? arrival?.parcel?.inHand ?? arrival?.observed;
	return seen?.offsetMinutes ?? 0;
}

/** Holidays at the place of delivery, or of the set that was chosen; null where nothing is known of the country. */
function holidaysFor(chosen: LegClaimInput["holidays"], country: string, events: ClaimEvents): Holidays | null {
	const years = Object.values(events).flatMap((date) => {
		const year = Number((date as CivilDate).slice(0, 4));
		return [year, year + 1];
	});
	try {
		return publicHolidays(chosen ?? { country }, new Set(years));
	} catch (error) {
		if (error instanceof Fault && chosen === undefined) return null;
		throw error;
	}
}

/** The next date on which someone has something to do; once all have passed, the last of them. */
function nextOf(periods: LegClaimView["periods"]): LegClaimView["periods"][number] | null {
	const ours = periods
		.filter(({ safeDate, consequence }) => safeDate !== null && !["carrier-duty", "deemed-lost"].includes(consequence))
		.sort((a, b) => String(a.safeDate).localeCompare(String(b.safeDate)));
	return ours.find(({ leftDays }) => (leftDays ?? -1) >= 0) ?? ours.at(-1) ?? null;
}
