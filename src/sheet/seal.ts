/**
 * A text that tells whether it is whole: JSON whose last entry is a checksum of all before it. The way of sealing is the
 * same in every version of the format, so that a text of a newer version is told from a damaged one.
 */
const SEAL = /,"checksum":"([0-9a-f]{8})"\}$/;
const CLOSING = "}";

export type SealState = "whole" | "broken" | "none";

/** Takes the text of a JSON object with at least one entry. */
export function sealed(text: string): string {
  const open = text.slice(0, -CLOSING.length);
  return `${open},"checksum":"${checksum(open)}"${CLOSING}`;
}

/** A text of "none" may still have lost its seal: who reads it looks for another sign that it had one. */
export function sealOf(text: string): SealState {
  const found = SEAL.exec(text);
  if (!found) return "none";
  return checksum(text.slice(0, found.index)) === found[1] ? "whole" : "broken";
}

/** What each value of a byte stands for in the 32-bit cyclic redundancy check (CRC-32, polynomial EDB88320). */
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  return remainder;
});

/**
 * CRC-32 over the two bytes of each character, low byte first. No change of up to 32 bits in a row escapes it, so no
 * single character does; it guards against accidents, not against intent. Written out here, since the browser's own
 * checksums answer only later, when a page that is being closed is gone.
 */
export function checksum(text: string): string {
  let remainder = 0xffffffff;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    remainder = (remainder >>> 8) ^ TABLE[(remainder ^ code) & 0xff]!;
    remainder = (remainder >>> 8) ^ TABLE[(remainder ^ (code >>> 8)) & 0xff]!;
  }
  return ((remainder ^ 0xffffffff) >>> 0).toString(16).padStart(8, "0");
}
