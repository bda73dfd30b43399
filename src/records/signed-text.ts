/** What a party's device signs of a log entry; read by the server and by the script on the device. */

export const PARTY_SIGNATURE_FORMAT = "handover-risk/party-signature/1";

export function signedText(leafSha256: string): string {
	return `${PARTY_SIGNATURE_FORMAT}\n${leafSha256}\n`;
}
