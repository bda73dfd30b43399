/**
 * The shop's own checks and item classes. Every change is a version of its own; a record goes by the version that its order
 * began with, so both ends of a journey are asked the same.
 */
import type { Caller } from "../../access/caller.ts";
import { checksOf } from "../../catalogue/checks/checks.ts";
import { ITEM_CLASSES } from "../../catalogue/codes.ts";
import {
	type KeptCheck,
	type KeptClass,
	keptCheck,
	keptClass,
	MOST_OF_CLASS,
	MOST_OWN,
	type OwnCatalogue,
} from "../../contract/own-catalogue.ts";
import type { Queryable } from "../../database/connection.ts";
import { insertOwnCatalogue, ownCatalogueAt } from "../../database/own-catalogue.ts";
import { type BadMember, fault, invalid } from "../../faults.ts";
import type { Deps } from "../deps.ts";
import { mustBeShop } from "../may.ts";
import { validate } from "../validate.ts";

const NOTHING: OwnCatalogue = { version: 0, checks: [], classes: [] };

/** A version, or the newest. @throws not-found for a version that never was */
export async function readOwnCatalogue(deps: Deps, caller: Caller, version?: number): Promise<OwnCatalogue> {
	mustBeShop(caller);
	if (version !== undefined && version !== 0 && (await ownCatalogueAt(deps.database, version)) === null)
		throw fault("not-found");
	return version === 0 ? NOTHING : ownCatalogueOf(deps.database, version ?? null);
}

/** A version, or the newest where none is named. */
export async function ownCatalogueOf(database: Queryable, version: number | null): Promise<OwnCatalogue> {
	const row = await ownCatalogueAt(database, version);
	return row === null ? NOTHING : { ...(row.facts as Omit<OwnCatalogue, "version">), version: row.version };
}

/** Adds a check, or replaces the one with that id. @throws bad-input; not-found; version-stale where two did so at once */
export async function keepOwnCheck(
	deps: Deps,
	caller: Caller,
	id: string | null,
	input: unknown,
): Promise<OwnCatalogue> {
	const check: KeptCheck = validate(keptCheck, input);
	return change(deps, caller, (before) => {
		const checks = replaced(before.checks, { ...check, id: id ?? deps.newId("chk") }, id);
		refuse([...checkProblems(check, id, before), ...tooManyOf("checks", checks.length), ...fullClasses(checks, check)]);
		return { ...before, checks };
	});
}

/** Takes a check away, also from the shop's own classes. Records that were opened before keep it. */
export async function removeOwnCheck(deps: Deps, caller: Caller, id: string): Promise<OwnCatalogue> {
	return change(deps, caller, (before) => {
		const checks = without(before.checks, id);
		const classes = before.classes.map((one) => ({ ...one, ownChecks: one.ownChecks.filter((own) => own !== id) }));
		return { ...before, checks, classes };
	});
}

/** Adds a class, or replaces the one with that id. @throws bad-input; not-found; version-stale */
export async function keepOwnClass(
	deps: Deps,
	caller: Caller,
	id: string | null,
	input: unknown,
): Promise<OwnCatalogue> {
	const kept: KeptClass = validate(keptClass, input);
	return change(deps, caller, (before) => {
		const classes = replaced(before.classes, { ...kept, id: id ?? deps.newId("cls") }, id);
		refuse([...classProblems(kept, id, before), ...tooManyOf("classes", classes.length)]);
		return { ...before, classes };
	});
}

/** Takes a class away. Orders that name it keep its name. */
export async function removeOwnClass(deps: Deps, caller: Caller, id: string): Promise<OwnCatalogue> {
	return change(deps, caller, (before) => ({ ...before, classes: without(before.classes, id) }));
}

async function change(deps: Deps, caller: Caller, next: (before: OwnCatalogue) => OwnCatalogue): Promise<OwnCatalogue> {
	mustBeShop(caller);
	const before = await ownCatalogueOf(deps.database, null);
	const { checks, classes } = next(before);
	const version = before.version + 1;
	if (!(await insertOwnCatalogue(deps.database, { version, facts: { checks, classes } }))) throw fault("version-stale");
	return { version, checks, classes };
}

function replaced<Thing extends { readonly id: string }>(
	things: readonly Thing[],
	thing: Thing,
	id: string | null,
): Thing[] {
	if (id === null) return [...things, thing];
	if (!things.some((one) => one.id === id)) throw fault("not-found");
	return things.map((one) => (one.id === id ? thing : one));
}

function without<Thing extends { readonly id: string }>(things: readonly Thing[], id: string): Thing[] {
	if (!things.some((one) => one.id === id)) throw fault("not-found");
	return things.filter((one) => one.id !== id);
}

function refuse(problems: readonly BadMember[]): void {
	if (problems.length > 0) throw invalid(problems);
}

function checkProblems({ definition }: KeptCheck, id: string | null, before: OwnCatalogue): BadMember[] {
	const { name, kind, limitLow, limitHigh } = definition;
	const taken = before.checks.some((other) => other.id !== id && other.definition.name === name);
	const limits = [limitLow, limitHigh].filter((limit) => limit !== undefined);
	return [
		...(taken ? [{ path: "/definition/name", code: "name-taken" }] : []),
		...(limitLow !== undefined && limitHigh !== undefined && limitLow > limitHigh
			? [{ path: "/definition/limitHigh", code: "limits-crossed" }]
			: []),
		...(kind === "outcome" && limits.some((limit) => !(limit >= 0 && limit <= 1))
			? [{ path: "/definition/limitLow", code: "limit-no-share" }]
			: []),
	];
}

function classProblems(kept: KeptClass, id: string | null, before: OwnCatalogue): BadMember[] {
	const known = new Set(checksOf(kept.treatedAs).map((check) => check.id));
	const taken = before.classes.some((other) => other.id !== id && other.name === kept.name);
	return [
		...(taken ? [{ path: "/name", code: "name-taken" }] : []),
		...kept.leftOut.flatMap((check, index) =>
			known.has(check) ? [] : [{ path: `/leftOut/${index}`, code: "unknown-id" }],
		),
		...kept.ownChecks.flatMap((own, index) =>
			before.checks.some((check) => check.id === own) && kept.ownChecks.indexOf(own) === index
				? []
				: [{ path: `/ownChecks/${index}`, code: "unknown-id" }],
		),
	];
}

function tooManyOf(kind: keyof typeof MOST_OWN, count: number): BadMember[] {
	return count > MOST_OWN[kind] ? [{ path: "", code: "catalogue-full", facts: { most: MOST_OWN[kind] } }] : [];
}

/** A sealed record holds five own checks, so a class has no more. */
function fullClasses(checks: OwnCatalogue["checks"], changed: KeptCheck): BadMember[] {
	return ITEM_CLASSES.filter(
		(itemClass) =>
			changed.classes.includes(itemClass) &&
			checks.filter((check) => check.classes.includes(itemClass)).length > MOST_OF_CLASS,
	).map(() => ({ path: "/classes", code: "class-full", facts: { most: MOST_OF_CLASS } }));
}
