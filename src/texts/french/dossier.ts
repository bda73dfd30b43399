/** Le guide dans un dossier. Ses commandes sont dans verify-commands.ts. */
import type { ReportTexts } from "../report-texts.ts";

export const dossier: ReportTexts["dossier"] = {
	"dossier.verify-text": `COMMENT VÉRIFIER CE DOSSIER

Il ne vous faut ni compte, ni réseau, ni aucun de nos programmes. Deux voies mènent à la même réponse.


A. Avec la page contenue dans ce dossier

Ouvrez data/verify-offline.html dans un navigateur (depuis le disque, sans réseau) et donnez-lui le
fichier ZIP du dossier tel que vous l’avez reçu. Elle contrôle tout ce qui suit, et dit ce qui échoue
et à quel endroit. Elle est en anglais.


B. Avec des programmes courants : sha256sum et OpenSSL 3

Ouvrez un shell dans le répertoire qui contient ce fichier. Chaque bloc peut être collé tel quel. Les
commandes répondent en anglais.

1. Rien n’a été modifié dans le dossier. Chaque ligne doit se terminer par OK.

{hashes}

2. L’état du journal (nom, nombre d’entrées, racine de son arbre) est signé par la clé.
   La réponse doit être : Signature Verified Successfully

{signature}

3. La racine à la troisième ligne de cet état est celle à laquelle monte l’étape suivante.
   Les deux lignes doivent être identiques.

{root}

4. Chaque entrée figure dans cet arbre (RFC 9162). Chaque ligne doit se terminer par OK.

{entries}

5. Chaque déclaration scellée est celle que nomme son entrée. Chaque ligne doit se terminer par OK.

{statements}

6. Chaque photo ou fichier original est nommé par une déclaration scellée. Chaque ligne doit se
   terminer par OK.

{exhibits}

7. Les photos sont transmises en copies sans métadonnées, ou aux parties noircies : une copie a son
   propre hachage, aucune déclaration ne la nomme donc. data/copies.txt les énumère : numéro, hachage
   de l’original, ce qui en tient lieu, hachage de la copie, qui a l’original. Une déclaration nomme
   chaque original, et chaque copie est celle de la liste. Chaque ligne doit se terminer par OK.

{copies}

8. Là où il y a des horodatages (RFC 3161), une autorité dit qu’un état antérieur du journal existait
   déjà alors. Demandez à l’autorité elle-même son certificat, sous le nom authority.pem. Que le
   journal n’a fait que croître depuis cet état, la voie A le contrôle.

{stamps}


CE QUI VOUS REVIENT

- Est-ce la bonne clé ? Qui invente un dossier peut inventer une clé. Comparez la clé avec une clé que
  vous avez reçue par une autre voie, par exemple la fiche imprimée ou un reçu plus ancien :

{key}

- Le rapport (data/report.pdf) et la comparaison (data/comparison.json) sont calculés à partir des
  déclarations scellées. Ils ne sont pas scellés eux-mêmes : là où cela compte, comparez-les aux
  déclarations, qui contiennent chaque mesure. La commande (data/order.json) est telle qu’elle est
  notée ; elle n’est pas scellée non plus, et permet à un autre service de lire ce dossier.
- Ce qu’une personne a tapé figure dans une déclaration sous forme de hachage. data/openings contient
  les mots et le sel qui le donnent ; la voie A les contrôle un par un.
- Un sceau montre que des mots n’ont pas été modifiés depuis. Il ne montre pas qu’ils sont vrais, ni
  que tout a été consigné.
- Une copie montre-t-elle la même chose que son original ? Seul l’original le dit : demandez-le à qui
  l’a, comparez son hachage (sha256sum) avec celui de data/copies.txt, puis regardez les deux.
- Les fichiers de data/exhibits sont tels qu’ils ont été apportés, transmis par qui les a apportés.
  Sauf pour les textes, ils peuvent dire où et avec quel appareil ils ont été faits. Transmettez-les
  avec prudence.
`,
};
