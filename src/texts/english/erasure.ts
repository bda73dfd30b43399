/** Erasing what is known of a person. */
export const erasure = {
	"erasure.link": "Erase the personal data of {name}",
	"erasure.title": "Erase the personal data of {name}",
	"erasure.goes-title": "What goes",
	"erasure.goes":
		"Name and addresses; of this person's orders: what was typed (fault, work, marks, remarks, statements, serial numbers, tracking numbers), what devices named, and every photo, video and log with its name. It is encrypted with a key of this person's own, and that key is deleted. Drafts are discarded, links are withdrawn.",
	"erasure.stays-title": "What stays",
	"erasure.stays":
		"That there were orders, records and seals, with their times, numbers, codes and hashes. The log stays verifiable: in the place of each text it holds a commitment, which says nothing without what is now erased. Records of this person's orders then prove much less: a comparison still has its numbers, and no words and photos.",
	"erasure.out-of-reach-title": "What cannot be called back",
	"erasure.out-of-reach":
		"Receipts, printed sheets and files that were already handed out, and backups: a backup taken before holds the data as long as it is kept together with the keys. A restore of such a backup beside this key folder erases it again at the next start.",
	"erasure.final":
		"This cannot be taken back. Whether and when you must, or may, erase while a claim is open is a matter of law on which this page gives no advice.",
	"erasure.confirm": "To erase, type the party's id: {id}",
	"erasure.now": "Erase it for good",
	"erasure.note":
		"What is known of the owner was erased on {time}. What was typed, named by devices or photographed is gone from this page: what reads as not recorded may have been recorded. Nothing more can be added to this order.",
	"erasure.done-title": "Erased",
	"erasure.done": "The key of {id} is deleted, and the log has an entry that says so.",
} as const;
