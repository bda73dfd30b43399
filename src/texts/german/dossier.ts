/** Die Anleitung in einem Dossier. Ihre Befehle stehen in verify-commands.ts. */
import type { ReportTexts } from "../report-texts.ts";

export const dossier: ReportTexts["dossier"] = {
	"dossier.verify-text": `SO WIRD DIESES DOSSIER GEPRÜFT

Sie brauchen kein Konto, kein Netz und keines unserer Programme. Zwei Wege führen zur selben Antwort.


A. Mit der Seite in diesem Dossier

Öffnen Sie data/verify-offline.html in einem Browser (vom Datenträger, ohne Netz) und geben Sie ihr
die ZIP-Datei des Dossiers, so wie Sie sie erhalten haben. Die Seite prüft alles Folgende und sagt,
was nicht besteht und an welcher Stelle. Sie ist auf Englisch.


B. Mit allgemein verfügbaren Programmen: sha256sum und OpenSSL 3

Öffnen Sie eine Shell im Ordner, in dem diese Datei liegt. Jeder Block kann so eingefügt werden, wie
er dasteht. Die Befehle antworten auf Englisch.

1. Im Dossier wurde nichts geändert. Jede Zeile muss mit OK enden.

{hashes}

2. Der Stand des Logbuchs (Name, Anzahl der Einträge, Wurzel seines Baums) ist mit dem Schlüssel
   signiert. Die Antwort muss lauten: Signature Verified Successfully

{signature}

3. Die Wurzel in der dritten Zeile dieses Stands ist die, zu der der nächste Schritt hinaufführt.
   Beide Zeilen müssen gleich sein.

{root}

4. Jeder Eintrag steht in diesem Baum (RFC 9162). Jede Zeile muss mit OK enden.

{entries}

5. Jede versiegelte Erklärung ist die, die ihr Eintrag nennt. Jede Zeile muss mit OK enden.

{statements}

6. Jedes Foto und jede Datei im Original wird von einer versiegelten Erklärung genannt. Jede Zeile
   muss mit OK enden.

{exhibits}

7. Fotos werden als Kopien ohne Metadaten oder mit geschwärzten Teilen weitergegeben: Eine Kopie hat
   einen eigenen Hash, daher nennt keine Erklärung sie. data/copies.txt führt sie auf: Nummer, Hash
   des Originals, was an seiner Stelle steht, Hash der Kopie, wer das Original hat. Eine Erklärung
   nennt jedes Original, und jede Kopie ist die aufgeführte. Jede Zeile muss mit OK enden.

{copies}

8. Wo es Zeitstempel gibt (RFC 3161), sagt ein Zeitstempeldienst, dass es einen früheren Stand des
   Logbuchs da schon gab. Besorgen Sie sich das Zertifikat des Dienstes beim Dienst selbst, als
   authority.pem. Dass das Logbuch seit diesem Stand nur gewachsen ist, prüft Weg A.

{stamps}


WAS IHNEN BLEIBT

- Ist es der richtige Schlüssel? Wer ein Dossier erfindet, kann auch einen Schlüssel erfinden.
  Vergleichen Sie ihn mit einem, den Sie auf anderem Weg erhalten haben, etwa vom gedruckten
  Begleitzettel oder aus einem älteren Beleg:

{key}

- Der Bericht (data/report.pdf) und der Vergleich (data/comparison.json) sind aus den versiegelten
  Erklärungen berechnet. Sie sind selbst nicht versiegelt: Wo es darauf ankommt, vergleichen Sie sie
  mit den Erklärungen, die jeden Messwert enthalten. Der Auftrag (data/order.json) steht da, wie er
  notiert ist; auch er ist nicht versiegelt, und mit ihm kann ein anderer Dienst dieses Dossier einlesen.
- Was ein Mensch getippt hat, steht in einer Erklärung als Hash. data/openings enthält die Worte und
  das Salz, die ihn ergeben; Weg A prüft sie einzeln.
- Ein Siegel zeigt, dass Worte seither nicht geändert wurden. Es zeigt nicht, dass sie wahr sind, und
  nicht, dass alles festgehalten wurde.
- Zeigt eine Kopie dasselbe wie ihr Original? Das sagt nur das Original: Verlangen Sie es von dem, der
  es hat, vergleichen Sie seinen Hash (sha256sum) mit dem in data/copies.txt, und sehen Sie sich dann
  beide an.
- Dateien in data/exhibits sind so, wie sie eingereicht wurden; weitergegeben hat sie, wer sie
  eingereicht hat. Außer bei Texten kann in ihnen stehen, wo und mit welchem Gerät sie entstanden
  sind. Geben Sie sie mit Bedacht weiter.
`,
};
