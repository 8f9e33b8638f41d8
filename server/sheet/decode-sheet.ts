import { DomainError } from "#shared/errors/refusal.ts";
import type { Encoding } from "#shared/sheet/encoding.ts";

/** How files that are no text begin: what they are in words. */
const beginnings: readonly (readonly [readonly number[], string])[] = [
  [[0x50, 0x4b, 0x03, 0x04], "a workbook or a zip file"],
  [[0xd0, 0xcf, 0x11, 0xe0], "a workbook of an old kind"],
  [[0x25, 0x50, 0x44, 0x46], "a PDF"],
  [[0x1f, 0x8b], "a compressed file"],
  [[0x89, 0x50, 0x4e, 0x47], "a picture"],
];

const startsWith = (bytes: Uint8Array, beginning: readonly number[]): boolean =>
  beginning.every((byte, index) => bytes[index] === byte);

const notText = (what: string): DomainError => new DomainError({ code: "sheet-not-text", args: { what } });

/** Of the beginning of a file: in UTF-16 each Latin letter has a zero byte, always on the same side. */
const LOOKED_AT = 4096;

/** How many zero bytes stand in even and in odd places. */
function zeros(bytes: Uint8Array): { readonly even: number; readonly odd: number } {
  const places = [...bytes.subarray(0, LOOKED_AT).entries()].filter(([, byte]) => byte === 0);
  const odd = places.filter(([place]) => place % 2 === 1).length;
  return { even: places.length - odd, odd };
}

function utf16In(bytes: Uint8Array): Encoding | null {
  if (startsWith(bytes, [0xff, 0xfe])) return "utf-16le";
  if (startsWith(bytes, [0xfe, 0xff])) return "utf-16be";
  const { even, odd } = zeros(bytes);
  const some = Math.min(bytes.length, LOOKED_AT) / 8;
  if (odd > some && even === 0) return "utf-16le";
  if (even > some && odd === 0) return "utf-16be";
  return null;
}

const isUtf8 = (bytes: Uint8Array): boolean => {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
};

/** A spreadsheet of an old Mac ends its lines with a return alone, and its letters lie where others have signs. */
const isMacintosh = (bytes: Uint8Array): boolean => bytes.includes(0x0d) && !bytes.includes(0x0a);

function encodingOf(bytes: Uint8Array): Encoding {
  const utf16 = utf16In(bytes);
  if (utf16 !== null) return utf16;
  if (bytes.includes(0)) throw notText("no text");
  if (isUtf8(bytes)) return "utf-8";
  return isMacintosh(bytes) ? "macintosh" : "windows-1252";
}

/** What Windows-1252 has in the places 0x80 to 0x9f (encoding.spec.whatwg.org/index-windows-1252.txt). */
const WINDOWS_SIGNS = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

/** Some versions of Node decode these places as Latin-1, which has only control signs there; a dash would be lost. */
const withWindowsSigns = (text: string): string =>
  text.replace(/[\u0080-\u009f]/g, (sign) => WINDOWS_SIGNS[sign.charCodeAt(0) - 0x80] ?? sign);

/**
 * The text of a file as a spreadsheet wrote it. The encoding is found by its marks where none is given; what cannot be told apart,
 * one Windows page from another, a person has to say. Throws `sheet-not-text` for a workbook, a zip, a PDF, a picture.
 */
export function decodeSheet(bytes: Uint8Array, encoding: Encoding | null): string {
  const other = beginnings.find(([beginning]) => startsWith(bytes, beginning));
  if (other !== undefined) throw notText(other[1]);
  const found = encoding ?? encodingOf(bytes);
  const text = new TextDecoder(found).decode(bytes);
  return found === "windows-1252" ? withWindowsSigns(text) : text;
}
