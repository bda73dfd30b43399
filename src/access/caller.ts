/** Who calls: nobody we know, an account of the shop, or the holder of a link. */

export type Caller =
	| { readonly kind: "nobody" }
	| { readonly kind: "account"; readonly accountId: string; readonly via: "session" | "token" }
	| {
			readonly kind: "link";
			readonly linkId: string;
			readonly scope: "record" | "settle" | "reader";
			readonly orderId: string;
			/** The record that a `record` link is for; null in the other scopes. */
			readonly recordId: string | null;
			/** The party that the link was made for; null for a `reader`. */
			readonly partyId: string | null;
			/** After expiry nothing new may be begun; a started draft may still be sealed for 72 hours. */
			readonly expired: boolean;
			/** When the device that calls entered the link. */
			readonly enteredAt: Date;
	  };
