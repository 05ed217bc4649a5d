import { unusable } from "../../../measures/cannot-answer";

/**
 * Refuses, with a sentence that names the file, a zip that was cut short or whose content does not match its checksums:
 * the unpacking library takes both without a word, and a patch would make the damage look sound.
 */
export function refuseDamaged(
  bytes: Uint8Array,
  unpacked: Readonly<Record<string, Uint8Array>>,
  fileName: string,
): void {
  for (const { name, checksum } of listed(bytes, fileName)) {
    if (name.endsWith("/")) continue;
    const content = unpacked[name];
    if (!content || crc32(content) !== checksum)
      throw unusable(
        `${fileName} is damaged: ${name} does not match its checksum. Nothing was changed.`,
      );
  }
}

interface Entry {
  readonly name: string;
  readonly checksum: number;
}

const END = 0x06054b50;
const CENTRAL = 0x02014b50;
const END_LENGTH = 22;
const CENTRAL_LENGTH = 46;

function listed(bytes: Uint8Array, fileName: string): readonly Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const cut = unusable(
    `${fileName} is damaged: it ends before its list of parts does. Nothing was changed.`,
  );
  const end = endOf(view);
  if (end === undefined) throw cut;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: Entry[] = [];
  for (let i = 0; i < count; i += 1) {
    if (
      at + CENTRAL_LENGTH > view.byteLength ||
      view.getUint32(at, true) !== CENTRAL
    )
      throw cut;
    const nameLength = view.getUint16(at + 28, true);
    entries.push({
      checksum: view.getUint32(at + 16, true),
      name: new TextDecoder().decode(
        bytes.subarray(at + CENTRAL_LENGTH, at + CENTRAL_LENGTH + nameLength),
      ),
    });
    at +=
      CENTRAL_LENGTH +
      nameLength +
      view.getUint16(at + 30, true) +
      view.getUint16(at + 32, true);
  }
  return entries;
}

/** The record at the end of a zip; a comment of up to 65,535 bytes may follow it. */
function endOf(view: DataView): number | undefined {
  const least = Math.max(0, view.byteLength - END_LENGTH - 0xffff);
  for (let at = view.byteLength - END_LENGTH; at >= least; at -= 1)
    if (view.getUint32(at, true) === END) return at;
  return undefined;
}

const table = Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

/** The checksum of a zip's parts (ISO 3309, polynomial 0xEDB88320). */
export function crc32(content: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of content) c = (table[(c ^ byte) & 0xff] ?? 0) ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}
