/** The guide inside a dossier. Its commands stand in verify-commands.ts. */
export const dossier = {
	"dossier.description": "Dossier of one order at {size} entries of its log, edition: {edition}",
	"dossier.verify-text": `HOW TO VERIFY THIS DOSSIER

You need no account, no network and none of our programs. Two ways lead to the same answer.


A. With the page in this dossier

Open data/verify-offline.html in a browser (from the disk, offline) and give it the dossier's
ZIP file as you received it. It checks everything that follows, and says what failed and where.


B. With standard programs: sha256sum, and OpenSSL 3

Open a shell in the folder that holds this file. Each block can be pasted as it stands.

1. Nothing was changed in the bag. Every line must end in OK.

{hashes}

2. The log's checkpoint (name, number of entries, root of its tree) is signed by the key.
   It must say: Signature Verified Successfully

{signature}

3. The root in the checkpoint's third line is the one that the next step climbs to.
   Both lines must be the same.

{root}

4. Each entry stands in that tree (RFC 9162). Every line must end in OK.

{entries}

5. Each sealed statement is the one that its entry names. Every line must end in OK.

{statements}

6. Each original photo or file is one that a sealed statement names. Every line must end in OK.

{exhibits}

7. Photos are handed on as copies without metadata, or with parts blacked out: a copy has a hash of
   its own, so no statement names it. data/copies.txt lists them: number, hash of the original,
   what stands for it, hash of the copy, who has the original. A statement names each original,
   and each copy is the one that is listed. Every line must end in OK.

{copies}

8. Where there are time stamps (RFC 3161), an authority says that an earlier checkpoint existed
   by then. Get the authority's certificate from the authority, as authority.pem. That the log
   only grew since that checkpoint is checked by way A.

{stamps}


WHAT IS LEFT TO YOU

- Is it the right key? Whoever makes up a dossier can make up a key. Compare the key with one
  that you had by another way, such as the printed slip or an older receipt:

{key}

- The report (data/report.pdf) and the comparison (data/comparison.json) are computed from the
  sealed statements. They are not sealed themselves: where it matters, compare them with the
  statements, which hold every reading. The order (data/order.json) is as it was noted; it is not
  sealed either, and lets another service read this dossier in.
- What a person typed stands in a statement as a hash. data/openings holds the words and the salt
  that give it; way A checks them, one by one.
- A seal shows that words were not changed since. It does not show that they are true, nor that
  everything was recorded.
- Does a copy show what its original shows? Only the original tells: ask for it whoever has it,
  compare its hash (sha256sum) with the one in data/copies.txt, then look at both.
- Files in data/exhibits are as they were brought, handed out by whoever brought them. Except
  for texts they may say where and with what device they were made. Hand them on with care.
`,
} as const;
