/** Builds the app, ready to listen or to be asked directly by a test. Everything is registered here, in order. */
import cookie from "@fastify/cookie";
import formbody from "@fastify/formbody";
import multipart from "@fastify/multipart";
import rateLimit from "@fastify/rate-limit";
import swagger from "@fastify/swagger";
import fastify, { type FastifyBaseLogger, type FastifyInstance, LogController, type RouteOptions } from "fastify";
import { jsonSchemaTransform, serializerCompiler } from "fastify-type-provider-zod";
import { callersOf, OPEN_TO_ALL } from "../access/callers.ts";
import { fault } from "../faults.ts";
import { registerAccess } from "../http/access.ts";
import { registerBenches } from "../http/benches.ts";
import { registerCalculations } from "../http/calculations.ts";
import { registerComparison } from "../http/comparison.ts";
import { registerDossier } from "../http/dossier.ts";
import { enforceCallers } from "../http/enforce-callers.ts";
import { registerExhibits } from "../http/exhibits.ts";
import { registerHealth } from "../http/health.ts";
import { registerImports } from "../http/imports.ts";
import { registerLearningAnswer } from "../http/learning.ts";
import { registerLegClaim } from "../http/leg-claim.ts";
import { registerLog } from "../http/log.ts";
import { registerMail } from "../http/mail.ts";
import { registerNotices } from "../http/notices.ts";
import { registerOrders } from "../http/orders.ts";
import { registerOwnCatalogue } from "../http/own-catalogue.ts";
import { registerPackagingAssessments } from "../http/packaging-assessments.ts";
import { registerPackagingSearch } from "../http/packaging-search.ts";
import { registerPictures } from "../http/pictures.ts";
import { faultOf, sendProblem } from "../http/problems.ts";
import { registerRecords } from "../http/records.ts";
import { registerReport } from "../http/report.ts";
import { registerSettling } from "../http/settling.ts";
import { registerShockTrace } from "../http/shock-trace.ts";
import { registerStock } from "../http/stock.ts";
import { registerTransitRecordings } from "../http/transit-recordings.ts";
import { registerUploads } from "../http/uploads.ts";
import { registerVerify } from "../http/verify.ts";
import { registerWarranty } from "../http/warranty.ts";
import type { Deps } from "../operations/deps.ts";
import { makeDropSeriesAssessor } from "../operations/drop-series/drop-series-assessor.ts";
import { makePackSearcher } from "../operations/packaging-search/pack-searcher.ts";
import { makeReportWriter } from "../operations/report/report-writer.ts";
import { makeTraceAssessor } from "../operations/shock-trace/trace-assessor.ts";
import { parseStrictJson } from "../operations/strict-json.ts";
import { validate } from "../operations/validate.ts";
import { makeReceiptVerifier } from "../operations/verify/receipt-verifier.ts";
import { registerAssets } from "../pages/assets.ts";
import { registerCustomerPages } from "../pages/customer/register-customer-pages.ts";
import { registerLogMark } from "../pages/log-mark.tsx";
import { registerShopPages } from "../pages/shop/shop-pages.ts";
import { registerVerifyPages } from "../pages/verify/verify-routes.tsx";

export interface AppOptions {
	readonly trustProxy?: boolean;
	readonly logger?: FastifyBaseLogger;
	/** Requests per minute and address to what is open to everyone; per process. */
	readonly requestsPerMinute?: number;
	/** Told of every route as it is registered. */
	readonly onRoute?: (route: RouteOptions) => void;
	/** Whether the service can serve; by default, whether the database answers. */
	readonly isReady?: () => Promise<boolean>;
}

const BODY_LIMIT = 1024 * 1024;
/** A photo upload's form on a page: the photo's limit and some fields. */
const UPLOAD_LIMIT = 20 * 1024 * 1024;

export async function buildApp(deps: Deps, options: AppOptions = {}): Promise<FastifyInstance> {
	const app = fastify({
		...(options.logger === undefined ? { logger: false } : { loggerInstance: options.logger }),
		trustProxy: options.trustProxy ?? false,
		bodyLimit: BODY_LIMIT,
		logController: new LogController({ disableRequestLogging: true }),
		// Addresses may hold the token of a link, so only the route's pattern is logged (below).
		routerOptions: { maxParamLength: 200 },
	});
	refuseLooseness(app);
	app.addHook("onResponse", async (request, reply) => {
		request.log.info(
			{
				method: request.method,
				route: request.routeOptions.url ?? "none",
				status: reply.statusCode,
				ms: Math.round(reply.elapsedTime),
			},
			"request",
		);
	});
	app.addHook("onSend", async (_request, reply) => {
		reply.header("X-Content-Type-Options", "nosniff");
		reply.header("Referrer-Policy", "same-origin");
		reply.header("Cross-Origin-Opener-Policy", "same-origin");
		reply.header("Content-Security-Policy", CONTENT_SECURITY_POLICY);
		if (deps.publicUrl.startsWith("https:")) reply.header("Strict-Transport-Security", "max-age=31536000");
	});
	app.setErrorHandler((error: Error, request, reply) => sendProblem(reply, faultOf(error, request), request.url));
	app.setNotFoundHandler((request, reply) => sendProblem(reply, fault("not-found"), request.url));

	await app.register(cookie);
	await app.register(formbody, { bodyLimit: BODY_LIMIT });
	await app.register(multipart, {
		attachFieldsToBody: true,
		// A file over the limit is cut one byte past it and refused by the act that takes it, so that the rest of its
		// form is not lost.
		throwFileSizeLimit: false,
		limits: { fileSize: UPLOAD_LIMIT + 1, files: 20, fields: 300, fieldSize: 256 * 1024 },
	});
	await app.register(rateLimit, {
		max: options.requestsPerMinute ?? 600,
		timeWindow: "1 minute",
		allowList: (request) => callersOf(request.routeOptions.config)?.includes("nobody") === false,
		errorResponseBuilder: (_request, context) => fault("too-many", { retryAfterS: Math.ceil(context.ttl / 1000) }),
	});
	await app.register(swagger, {
		openapi: {
			openapi: "3.1.0",
			info: {
				title: "handover-risk",
				version: "1",
				description: "States of boards at each hand-over, their packaging, and what changed.",
			},
		},
		transform: (document) => {
			const transformed = jsonSchemaTransform(document);
			const callers = callersOf(document.route.config) ?? [];
			return { ...transformed, schema: { ...transformed.schema, "x-callers": callers } as typeof transformed.schema };
		},
	});
	if (options.onRoute !== undefined) app.addHook("onRoute", options.onRoute);
	enforceCallers(app, deps);

	const answers = async () => (await deps.database.query("SELECT FROM sealed_entry LIMIT 1")).length >= 0;
	registerHealth(app, options.isReady ?? answers);
	registerCalculations(app);
	const searchPacks = makePackSearcher();
	registerPackagingSearch(app, searchPacks);
	registerShockTrace(app, makeTraceAssessor(), makeDropSeriesAssessor());
	registerAccess(app, deps);
	registerOrders(app, deps);
	registerMail(app, deps);
	registerRecords(app, deps);
	registerExhibits(app, deps);
	registerUploads(app, deps);
	registerPictures(app, deps);
	registerLog(app, deps);
	registerBenches(app, deps);
	registerStock(app, deps);
	registerOwnCatalogue(app, deps);
	registerImports(app);
	registerComparison(app, deps);
	registerLegClaim(app, deps);
	registerLearningAnswer(app, deps);
	registerNotices(app, deps);
	registerSettling(app, deps);
	registerWarranty(app, deps);
	registerPackagingAssessments(app, deps);
	registerTransitRecordings(app, deps);
	const writeReport = makeReportWriter();
	registerReport(app, deps, writeReport);
	registerDossier(app, deps, writeReport);
	const verifyReceipt = makeReceiptVerifier();
	registerVerify(app, verifyReceipt);
	registerLogMark(app, deps);
	registerAssets(app);
	registerShopPages(app, deps, searchPacks);
	registerCustomerPages(app, deps);
	registerVerifyPages(app, verifyReceipt);
	app.get("/api/v1/openapi.json", { ...OPEN_TO_ALL, schema: { hide: true } }, async () => app.swagger());
	await app.ready();
	return app;
}

const CONTENT_SECURITY_POLICY = [
	"default-src 'none'",
	"style-src 'self'",
	"img-src 'self' data: blob:",
	"script-src 'self'",
	"connect-src 'self'",
	"form-action 'self'",
	"frame-ancestors 'none'",
	"base-uri 'none'",
].join("; ");

/**
 * Fastify by itself turns null into 0 and drops members it does not know. Here a body is text, then strict JSON, then
 * a strict shape; the framework's own validation is not used for bodies.
 */
function refuseLooseness(app: FastifyInstance): void {
	app.removeContentTypeParser(["application/json", "text/plain"]);
	app.addContentTypeParser("application/json", { parseAs: "string" }, (_request, body, done) => {
		try {
			done(null, parseStrictJson(body as string));
		} catch (error) {
			done(error as Error);
		}
	});
	app.setValidatorCompiler(({ schema }) => (value) => ({ value: validate(schema as never, value) }));
	app.setSerializerCompiler(serializerCompiler);
}
