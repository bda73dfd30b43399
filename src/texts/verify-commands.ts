/**
 * The commands of a dossier's guide, the same in each language; a test runs every one as it stands. Standard programs alone:
 * a shell, sha256sum, OpenSSL 3.
 */
export const VERIFY_COMMANDS = {
	hashes: `sha256sum -c tagmanifest-sha256.txt
sha256sum -c manifest-sha256.txt`,
	signature: `openssl pkeyutl -verify -rawin -pubin -inkey data/log/key.pem -sigfile data/log/checkpoint.sig -in data/log/checkpoint.txt`,
	root: `sed -n 3p data/log/checkpoint.txt
openssl base64 -in data/log/root.bin`,
	entries: `for n in $(ls data/entries | sed 's/.json//'); do
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
rm -f node.tmp`,
	statements: `for n in $(ls data/statements | sed 's/.json//'); do
  h=$(sha256sum < data/statements/$n.json | cut -c 1-64)
  grep -q "\\"statementSha256\\":\\"$h\\"" data/entries/$n.json && echo "statement $n: OK" || echo "statement $n: FAILED"
done`,
	exhibits: `for f in $(ls data/exhibits 2>/dev/null); do
  h=$(sha256sum < data/exhibits/$f | cut -c 1-64)
  cat data/statements/*.json | grep -q "$h" && echo "exhibit $f: OK" || echo "exhibit $f: FAILED"
done`,
	copies: `while read n original kind copy who; do
  cat data/statements/*.json | grep -q "$original" && s=OK || s=FAILED
  [ "$copy" = "-" ] || sha256sum data/copies/$n.jpg | grep -q "^$copy" || s=FAILED
  echo "$n, $kind, original with $who: $s"
done < data/copies.txt`,
	stamps: `for t in $(ls data/log/time-stamps 2>/dev/null | grep note.txt | sed 's/.note.txt//'); do
  openssl ts -verify -in data/log/time-stamps/$t.token.der -token_in -data data/log/time-stamps/$t.note.txt -CAfile authority.pem
done`,
	key: `openssl pkey -pubin -in data/log/key.pem -noout -text`,
} as const;
