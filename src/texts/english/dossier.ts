/** The guide inside a dossier. Every command in it is run by a test as it stands. */
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

sha256sum -c tagmanifest-sha256.txt
sha256sum -c manifest-sha256.txt

2. The log's checkpoint (name, number of entries, root of its tree) is signed by the key.
   It must say: Signature Verified Successfully

openssl pkeyutl -verify -rawin -pubin -inkey data/log/key.pem -sigfile data/log/checkpoint.sig -in data/log/checkpoint.txt

3. The root in the checkpoint's third line is the one that the next step climbs to.
   Both lines must be the same.

sed -n 3p data/log/checkpoint.txt
openssl base64 -in data/log/root.bin

4. Each entry stands in that tree (RFC 9162). Every line must end in OK.

for n in $(ls data/entries | sed 's/.json//'); do
  ( printf '\\000'; cat data/entries/$n.json ) | openssl dgst -sha256 -binary > node.tmp
  for s in $(ls data/proofs/$n 2>/dev/null); do
    case $s in
      *left*) ( printf '\\001'; cat data/proofs/$n/$s node.tmp ) | openssl dgst -sha256 -binary > up.tmp ;;
      *) ( printf '\\001'; cat node.tmp data/proofs/$n/$s ) | openssl dgst -sha256 -binary > up.tmp ;;
    esac
    mv up.tmp node.tmp
  done
  cmp -s node.tmp data/log/root.bin && echo "entry $n in the log: OK" || echo "entry $n in the log: FAILED"
done
rm -f node.tmp

5. Each sealed statement is the one that its entry names. Every line must end in OK.

for n in $(ls data/statements | sed 's/.json//'); do
  h=$(sha256sum < data/statements/$n.json | cut -c 1-64)
  grep -q "\\"statementSha256\\":\\"$h\\"" data/entries/$n.json && echo "statement $n: OK" || echo "statement $n: FAILED"
done

6. Each original photo or file is one that a sealed statement names. Every line must end in OK.

for f in $(ls data/exhibits 2>/dev/null); do
  h=$(sha256sum < data/exhibits/$f | cut -c 1-64)
  cat data/statements/*.json | grep -q "$h" && echo "exhibit $f: OK" || echo "exhibit $f: FAILED"
done

7. Photos are handed on as copies without metadata, or with parts blacked out: a copy has a hash of
   its own, so no statement names it. data/copies.txt lists them: number, hash of the original,
   what stands for it, hash of the copy, who has the original. A statement names each original,
   and each copy is the one that is listed. Every line must end in OK.

while read n original kind copy who; do
  cat data/statements/*.json | grep -q "$original" && s=OK || s=FAILED
  [ "$copy" = "-" ] || sha256sum data/copies/$n.jpg | grep -q "^$copy" || s=FAILED
  echo "$n, $kind, original with $who: $s"
done < data/copies.txt

8. Where there are time stamps (RFC 3161), an authority says that an earlier checkpoint existed
   by then. Get the authority's certificate from the authority, as authority.pem. That the log
   only grew since that checkpoint is checked by way A.

for t in $(ls data/log/time-stamps 2>/dev/null | grep note.txt | sed 's/.note.txt//'); do
  openssl ts -verify -in data/log/time-stamps/$t.token.der -token_in -data data/log/time-stamps/$t.note.txt -CAfile authority.pem
done


WHAT IS LEFT TO YOU

- Is it the right key? Whoever makes up a dossier can make up a key. Compare the key with one
  that you had by another way, such as the printed slip or an older receipt:

openssl pkey -pubin -in data/log/key.pem -noout -text

- The report (data/report.pdf) and the comparison (data/comparison.json) are computed from the
  sealed statements. They are not sealed themselves: where it matters, compare them with the
  statements, which hold every reading.
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
