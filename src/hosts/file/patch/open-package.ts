import { CannotAnswer, unusable } from "../../../measures/cannot-answer";
import { partXml, unpack, workbookPart, type Parts } from "../package-parts";
import { sheetEntries, type SheetEntry } from "../sheet-entries";
import type { XmlElement } from "../xml";
import { refuseDamaged } from "./sound-zip";

/** A user's workbook taken apart: what is not replaced goes back byte for byte. */
export interface OpenPackage {
  readonly parts: Parts;
  readonly workbookName: string;
  readonly book: XmlElement;
  readonly sheets: readonly SheetEntry[];
}

/** Takes a workbook apart, or refuses with one sentence that names the file and says what stands in the way. */
export function openPackage(bytes: Uint8Array, fileName: string): OpenPackage {
  refuseOtherKinds(bytes, fileName);
  const parts = sound(bytes, fileName);
  if (Object.keys(parts).some((part) => part.startsWith("_xmlsignatures/")))
    throw unusable(
      `${fileName} is signed, and any change would break the signature; save an unsigned copy and add to that.`,
    );
  try {
    const workbookName = workbookPart(parts);
    if (!workbookName) throw unusable(`${fileName} holds no workbook.`);
    const book = partXml(parts, workbookName);
    if (new TextDecoder().decode(parts[workbookName]).includes(STRICT))
      throw unusable(
        `${fileName} is saved as a Strict Open XML workbook; save it as an ordinary .xlsx workbook and try again.`,
      );
    return {
      parts,
      workbookName,
      book,
      sheets: sheetEntries(parts, workbookName, book),
    };
  } catch (error) {
    if (error instanceof CannotAnswer) throw error;
    const reason = error instanceof Error ? ` (${error.message})` : "";
    throw unusable(`${fileName} is damaged${reason}. Nothing was changed.`);
  }
}

const STRICT = "http://purl.oclc.org/ooxml/";

function refuseOtherKinds(bytes: Uint8Array, fileName: string): void {
  const starts = (...signature: readonly number[]): boolean =>
    signature.every((byte, i) => bytes[i] === byte);
  if (bytes.length === 0) throw unusable(`${fileName} is empty.`);
  if (starts(0xd0, 0xcf, 0x11, 0xe0))
    throw unusable(
      `${fileName} is locked with a password or is a workbook of the older .xls kind; save it as .xlsx without a password and try again.`,
    );
  if (!starts(0x50, 0x4b))
    throw unusable(`${fileName} is not an .xlsx workbook.`);
}

function sound(bytes: Uint8Array, fileName: string): Parts {
  let parts: Parts;
  try {
    parts = unpack(bytes);
  } catch {
    throw unusable(
      `${fileName} is damaged or was cut short. Nothing was changed.`,
    );
  }
  refuseDamaged(bytes, parts, fileName);
  return parts;
}
