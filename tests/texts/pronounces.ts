/** Words by which a sentence would decide between the parties, or turn a probability round. */
export const PRONOUNCES =
	/\b(liable|liability|guilty|blame[ds]?|culprit|negligen\w+|responsible for|is at fault|was at fault|your fault|caused (it|this|the damage)|was caused by|is to blame|must pay|has to pay)\b/i;

/**
 * P(origin | findings) said where only P(findings | origin) is known: a cause called probable, likely or proven. To say
 * how probable findings are under an origin is right.
 */
export const TRANSPOSES =
	/\b((probably|likely|presumably|certainly|clearly|evidently) ((was )?(caused|dropped|damaged|broken|shaken|happened)|came from|was there before)|(most )?(likely|probable) (cause|origin|reason)|(cause|origin) is (probably|likely|most likely|proven|certain)|(probability|chance|likelihood) (that|of) (the carrier|the sender|the repairer|the owner|a (party|side))|proves? (that|who) (the )?(carrier|sender|repairer|owner|consignee|trip|transit)|must have been (dropped|damaged|caused))\b/i;

/** The same for reports in German and French, by language: the words by which one is declared liable or at fault. */
export const PRONOUNCES_IN = {
	en: PRONOUNCES,
	de: /(?<![\p{L}])(haftet|haften|haftbar|haftung|haftpflichtig|schuldig\w*|schuldhaft\w*|schuld (an|ist|hat)|verschulden|verschuldet\w*|fahrlässig\w*|verantwortlich\w* für|verursacht\w* (hat|haben|durch|von)|(durch|von) .{1,60} verursacht|muss (be)?zahlen|zu zahlen hat|ersatzpflichtig\w*)(?![\p{L}])/iu,
	fr: /(?<![\p{L}])(responsables?|responsabilité|coupables?|culpabilité|fauti(f|ve)s?|(sa|leur|votre|en|par la) faute|négligen\w+|(a|ont) (causé|provoqué)|(causée?|provoquée?)s? par|doit payer|doivent payer|à blâmer)(?![\p{L}])/iu,
} as const;

/** And a cause called probable, likely or proven, where only findings under an origin are. */
export const TRANSPOSES_IN = {
	en: TRANSPOSES,
	de: /(?<![\p{L}])((wahrscheinlich|vermutlich|mutmaßlich|sicherlich|offensichtlich) (wurde|ist|hat|beim|durch|auf dem|vor dem)|(wahrscheinlich(st)?e|vermutliche|mutmaßliche)[nrs]? (Ursache|Herkunft|Grund)|Wahrscheinlichkeit, dass (der (Frachtführer|Absender|Empfänger|Reparaturbetrieb|Eigentümer)|eine (Partei|Seite))|bewei(st|sen), dass (der|die) (Frachtführer|Absender|Empfänger|Reparaturbetrieb|Eigentümer|Reise|Transport)|muss (heruntergefallen|fallen gelassen worden|beschädigt worden) sein)(?![\p{L}])/iu,
	fr: /(?<![\p{L}])((probablement|vraisemblablement|sans doute|certainement|manifestement) (causée?|provoquée?|tombée?|lâchée?|endommagée?|cassée?|survenue?)|(cause|origine) (la plus )?(probable|vraisemblable)|(cause|origine) est (probable|certaine|prouvée)|probabilité que (le (transporteur|réparateur|propriétaire|destinataire)|l’expéditeur|une (partie|des parties))|prouv(e|ent) que (le (transporteur|réparateur|propriétaire|destinataire|voyage)|l’expéditeur)|(a|ont) dû (tomber|être (lâchée?|endommagée?|causée?)))(?![\p{L}])/iu,
} as const;
