/** Orders: parties, the item, the terms; consignments, the legs of its journey. */
import { z } from "zod";
import { DELIVERY_MANNERS, ITEM_CLASSES } from "../catalogue/codes.ts";
import { LANGUAGES } from "../texts/language.ts";
import { civilDate, country, dateTime, id, money, positive, text } from "./common.ts";
import { mailAddress } from "./mail-address.ts";

export const partyInput = z.strictObject({
	kind: z.enum(["consumer", "business"]),
	country,
	/** In which mails are written to it; English where nothing is said. */
	language: z.enum(LANGUAGES).optional(),
	name: text(200),
	email: mailAddress.optional(),
	address: text(500).optional(),
});
export type PartyInput = z.infer<typeof partyInput>;

export const itemInput = z.strictObject({
	class: z.enum(ITEM_CLASSES),
	/** A class of the shop's own, which is treated as `class`. */
	ownClassId: id("cls").optional(),
	maker: text(100),
	model: text(200),
	serialNumber: text(100).optional(),
	massKg: positive.max(200).optional(),
	lengthM: positive.max(5).optional(),
	widthM: positive.max(5).optional(),
	heightM: positive.max(5).optional(),
	value: money.optional(),
	/** When it was new, for its age. */
	boughtOn: civilDate.optional(),
	cell: z.enum(["none", "coin", "lithium-ion", "supercapacitor"]).optional(),
	fragilityGn: positive.max(10_000).optional(),
	fragilityBasis: z.enum(["tested", "maker", "board-strength", "class", "our-choice"]).optional(),
});
export type ItemInput = z.infer<typeof itemInput>;

export const orderTerms = z.strictObject({
	/** What the owner says is wrong, and what is to be done. */
	reportedFault: text(2000),
	agreedWork: text(2000),
	warranty: z.strictObject({ months: z.number().int().min(0).max(240), covers: text(1000) }).optional(),
	/** Who makes the contract with the carrier, on each way. */
	carrierContract: z.strictObject({
		toRepairer: z.enum(["owner", "repairer"]),
		toOwner: z.enum(["owner", "repairer"]),
	}),
});
export type OrderTerms = z.infer<typeof orderTerms>;

export const orderInput = z.strictObject({
	contractKind: z.enum(["repair", "exchange", "warranty-return"]),
	repairer: z.union([partyInput, z.strictObject({ id: id("pty") })]),
	owner: z.union([partyInput, z.strictObject({ id: id("pty") })]),
	item: itemInput,
	terms: orderTerms,
});
export type OrderInput = z.infer<typeof orderInput>;

export const consignmentFacts = z.strictObject({
	carrier: text(100).optional(),
	service: text(100).optional(),
	mode: z.enum(["road", "air", "sea", "rail", "mixed", "carried-by-hand"]),
	bookedBy: z.enum(["consignor", "consignee"]),
	trackingNumber: text(100).optional(),
	declaredValue: money.optional(),
	insuredValue: money.optional(),
	parcelMassKg: positive.max(1000).optional(),
	dispatchedAt: dateTime.optional(),
	deliveredAt: dateTime.optional(),
	inHandAt: dateTime.optional(),
	manner: z.enum(DELIVERY_MANNERS).optional(),
	/** Whether pads lay elsewhere than they were put, and corners of the box were crushed: noted when the pack was opened. */
	padsShifted: z.boolean().optional(),
	cornersCrushed: z.boolean().optional(),
});
export type ConsignmentFacts = z.infer<typeof consignmentFacts>;

export const consignmentInput = z.strictObject({
	direction: z.enum(["to-repairer", "to-owner"]),
	facts: consignmentFacts,
});
export type ConsignmentInput = z.infer<typeof consignmentInput>;

/** `erasedAt`: when what is known of the party was erased; its texts then are placeholders. */
export const partyView = partyInput.extend({ id: id("pty"), erasedAt: z.string().optional() });
export type PartyView = z.infer<typeof partyView>;

export const itemView = itemInput.extend({ id: id("itm"), ownClassName: z.string().optional() });
export type ItemView = z.infer<typeof itemView>;

export const consignmentView = z.strictObject({
	id: id("con"),
	orderId: id("ord"),
	leg: z.number().int(),
	direction: z.enum(["to-repairer", "to-owner"]),
	consignorId: id("pty"),
	consigneeId: id("pty"),
	facts: consignmentFacts,
	version: z.number().int(),
});
export type ConsignmentView = z.infer<typeof consignmentView>;

export const orderView = z.strictObject({
	id: id("ord"),
	createdAt: z.string(),
	contractKind: z.enum(["repair", "exchange", "warranty-return"]),
	repairer: partyView,
	owner: partyView,
	item: itemView,
	terms: orderTerms,
	consignments: z.array(consignmentView),
	/** Where it was read in from a dossier: the log that sealed it. Nothing is added to such an order. */
	readIn: z
		.strictObject({
			origin: z.string(),
			keys: z.array(z.string()),
			treeSize: z.number().int(),
			readInAt: z.string(),
			dossierSha256: z.string(),
		})
		.optional(),
});
export type OrderView = z.infer<typeof orderView>;

export const orderList = z.strictObject({ orders: z.array(orderView) });
