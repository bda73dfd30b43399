/** What is said about diagnostic outputs: refusals, and warnings beside what was read. */
export const imports = {
	"import.empty": "The file is empty.",
	"import.not-text": "This is not a text file, or it is damaged.",
	"import.format-not-read": "The format was not recognised. What is read: {read}.",
	"import.not-this-format": "This is not the output of {format}.",
	"import.version-not-read": "The file says version {version}; versions {read} are read.",
	"import.xml-broken": "The XML is not complete or not well-formed here (column {column}). Send the whole file.",
	"import.xml-internal-subset": "The document type holds declarations of its own, which such a file never does.",
	"import.xml-too-deep": "The elements are nested deeper than in any such file.",
	"import.no-device": "No device that can be read was found in the file.",
	"import.line-not-understood": "This line was not understood: {line}",
	"import.warn-device-count": "The file says that {said} devices are attached and holds {found}.",
	"import.warn-several-devices": "The file holds {found} devices; choose the one that the record is about.",
	"import.warn-not-understood": "A value was not understood and left out: {raw}",
	"import.warn-maximum-of-card-and-system":
		"The maximum ({what}) that this tool prints is that of card and system together; the card alone may be capable of more.",
	"import.warn-load-contradicted": "The file was said to be taken under load, but the device was hardly working.",
	"import.warn-idle-contradicted": "The file was said to be taken at idle, but the device was working.",
	"import.warn-slowed-down": "The device had slowed itself down: {reason}.",
	"import.warn-access-denied":
		"The link of {subject} could not be read: the command was not run with administrator rights.",
	"import.warn-bus-lost": "The registers of {subject} read all ones: the device no longer answers on the bus.",
	"import.warn-sticky-bits":
		"Error bits of {subject} are set. They stay set until someone clears them, so they do not say when.",
	"import.warn-path-not-seen":
		"The bridges between {subject} and the root port are not in the file, so the slowest point of the path is not known.",
} as const;
