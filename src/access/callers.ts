/**
 * Who may call a route. Every route declares it with `openTo`; `http/enforce-callers.ts` holds it, and finds the caller
 * once per request, which is then had from `callerOf`.
 */
import type { Caller } from "./caller.ts";

/** Kinds of callers; `nobody` opens a route to those we do not know. */
export const CALLER_CLASSES = ["nobody", "account", "link:record", "link:settle", "link:reader"] as const;
export type CallerClass = (typeof CALLER_CLASSES)[number];

interface RouteConfig {
	readonly url?: string;
	readonly callers: readonly CallerClass[];
	/** Narrower limits on a form with files than the app's. */
	readonly multipartOptions?: { readonly limits: FileLimits };
	/** Whether files are taken from callers that we do not know. */
	readonly filesFromNobody?: boolean;
}

/** Sizes in bytes. */
export interface FileLimits {
	readonly fileSize: number;
	readonly files: number;
	readonly fields: number;
	readonly fieldSize: number;
}

/** A route's declaration: `app.get(path, { ...openTo("account") }, handler)`. */
export function openTo(...callers: readonly CallerClass[]): { config: RouteConfig } {
	return { config: { callers } };
}

/** Everyone, signed in or not. */
export const OPEN_TO_ALL = openTo(...CALLER_CLASSES);

/** Everyone, and a form may bring files within these limits; elsewhere files are taken from known callers alone. */
export function openToAllWithFiles(limits: FileLimits): { config: RouteConfig } {
	return { config: { callers: CALLER_CLASSES, multipartOptions: { limits }, filesFromNobody: true } };
}

/** Whether a route takes files from callers that we do not know. */
export function takesFilesFromNobody(config: unknown): boolean {
	return (config as Partial<RouteConfig> | undefined)?.filesFromNobody === true;
}

/** What a route declared; null where it declared nothing. */
export function callersOf(config: unknown): readonly CallerClass[] | null {
	return (config as Partial<RouteConfig> | undefined)?.callers ?? null;
}

/** The class of a caller, as routes declare it. */
export function classOf(caller: Caller): CallerClass {
	return caller.kind === "link" ? `link:${caller.scope}` : caller.kind;
}

interface Found {
	readonly caller: Caller;
	/** The token that forms on a page for this request carry; empty where no cookie came. */
	readonly formToken: string;
}

const found = new WeakMap<object, Found>();

/** Keeps who makes a request; called by the hook that found out. */
export function noteCaller(request: object, caller: Caller, formToken: string): void {
	found.set(request, { caller, formToken });
}

/** The caller of a request. */
export function callerOf(request: object): Caller {
	return found.get(request)?.caller ?? { kind: "nobody" };
}

/** The token for the forms of a page that answers this request. */
export function formTokenFor(request: object): string {
	return found.get(request)?.formToken ?? "";
}
