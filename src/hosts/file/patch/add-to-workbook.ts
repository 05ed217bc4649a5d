import { unusable } from "../../../measures/cannot-answer";
import type { DefinedName, Sheet } from "../../../sheets/workbook";
import {
  pack,
  partBytes,
  partText,
  partXml,
  relationsOf,
  unpack,
  workbookPart,
  type Parts,
} from "../package-parts";
import { sheetEntries } from "../sheet-entries";
import { textFromFile, textInAttribute } from "../worksheet-text";
import { writeXlsx } from "../write-xlsx";
import { allNamed, childNamed, childrenNamed, escapeXml } from "../xml";
import { graftSheets } from "./graft-sheets";
import { graftStyles } from "./graft-styles";
import { openPackage, type OpenPackage } from "./open-package";
import { relationsName } from "./part-names";
import { appendedTo, insertedAfter, withRelationPrefix } from "./xml-insertion";

export interface Addition {
  readonly sheets: readonly Sheet[];
  readonly names: readonly DefinedName[];
}

/**
 * Adds sheets, with their tables and names, to a workbook somebody else made. Only the list of sheets, its relationships,
 * the content types and the ends of the style lists are written to; every other part stays byte for byte as it was.
 * Refuses (#VALUE!) a sheet, table or name that the workbook has already, and a file that cannot be added to safely.
 */
export async function addToWorkbook(
  bytes: Uint8Array,
  fileName: string,
  addition: Addition,
): Promise<Uint8Array> {
  const open = openPackage(bytes, fileName);
  refuseTaken(open, fileName, addition);
  const ours = unpack(await writeXlsx({ title: "", ...addition }));
  const ourBook = workbookPart(ours) ?? "";
  const entries = sheetEntries(ours, ourBook, partXml(ours, ourBook));
  const stylesName = relationsOf(open.parts, open.workbookName).find(
    ({ kind }) => kind === "styles",
  )?.target;
  if (!stylesName || !open.parts[stylesName])
    throw unusable(
      `${fileName} has no styles part; open it in a spreadsheet program, save it, and try again.`,
    );
  const styles = graftStyles(
    partText(open.parts, stylesName),
    partText(ours, "xl/styles.xml"),
  );
  const grafted = graftSheets(
    open.parts,
    ours,
    entries.map(({ part }) => part),
    styles.offset,
  );
  const added = entries.map(({ name, part, hidden }) => ({
    name,
    hidden,
    part: grafted.names.get(part) ?? part,
  }));
  return pack({
    ...open.parts,
    ...grafted.parts,
    [stylesName]: partBytes(styles.xml),
    "[Content_Types].xml": partBytes(
      contentTypes(open.parts, ours, grafted.names),
    ),
    ...listed(open, added, namesText(ours, ourBook, open.sheets.length)),
  });
}

function refuseTaken(
  { parts, book, sheets }: OpenPackage,
  fileName: string,
  addition: Addition,
): void {
  const taken = new Set(sheets.map(({ name }) => name.toLowerCase()));
  for (const { name } of addition.sheets)
    if (taken.has(name.toLowerCase()))
      throw unusable(
        `${fileName} already has a sheet "${name}"; rename that one, or add under another name.`,
      );
  const names = new Set([
    ...childrenNamed(childNamed(book, "definedNames"), "definedName").map(
      ({ attributes }) => textFromFile(attributes["name"] ?? "").toLowerCase(),
    ),
    ...tableNames(parts),
  ]);
  const wanted = [
    ...addition.names.map(({ name }) => name),
    ...addition.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)),
  ];
  for (const name of wanted)
    if (names.has(name.toLowerCase()))
      throw unusable(
        `${fileName} already has a table or name "${name}"; nothing was added.`,
      );
}

const tableNames = (parts: Parts): readonly string[] =>
  Object.keys(parts)
    .filter((part) => /\/tables\/[^/]+\.xml$/.test(part))
    .map((part) =>
      textFromFile(
        partXml(parts, part).attributes["displayName"] ?? "",
      ).toLowerCase(),
    );

function contentTypes(
  user: Parts,
  ours: Parts,
  names: ReadonlyMap<string, string>,
): string {
  const types = partXml(ours, "[Content_Types].xml");
  const given = allNamed(partXml(user, "[Content_Types].xml"), "Default").map(
    ({ attributes }) => (attributes["Extension"] ?? "").toLowerCase(),
  );
  const used = new Set([...names.values()].map((n) => n.split(".").pop()));
  const defaults = allNamed(types, "Default")
    .filter(
      ({ attributes: { Extension = "" } }) =>
        used.has(Extension) && !given.includes(Extension.toLowerCase()),
    )
    .map(
      ({ attributes }) =>
        `<Default Extension="${attributes["Extension"]}" ContentType="${attributes["ContentType"]}"/>`,
    );
  const overrides = allNamed(types, "Override").flatMap(({ attributes }) => {
    const to = names.get((attributes["PartName"] ?? "").slice(1));
    return to
      ? [
          `<Override PartName="/${to}" ContentType="${attributes["ContentType"]}"/>`,
        ]
      : [];
  });
  const xml = partText(user, "[Content_Types].xml");
  return must(appendedTo(xml, "Types", [...defaults, ...overrides].join("")));
}

/** Our names as the workbook part writes them; those of single sheets count from where the user's sheets end. */
const namesText = (ours: Parts, book: string, sheets: number): string =>
  (
    /<definedNames>([\s\S]*)<\/definedNames>/.exec(partText(ours, book))?.[1] ??
    ""
  ).replace(
    /localSheetId="(\d+)"/g,
    (_, sheet: string) => `localSheetId="${Number(sheet) + sheets}"`,
  );

function listed(
  { parts, workbookName, book }: OpenPackage,
  added: readonly {
    readonly name: string;
    readonly part: string;
    readonly hidden: boolean;
  }[],
  names: string,
): Parts {
  const relations = relationsOf(parts, workbookName);
  const { xml: start, prefix } = withRelationPrefix(
    partText(parts, workbookName),
  );
  const ids = freshIds(
    relations.map(({ id }) => id),
    added.length,
  );
  const lastId = Math.max(
    0,
    ...childrenNamed(childNamed(book, "sheets"), "sheet").map(
      ({ attributes }) => Number(attributes["sheetId"] ?? 0),
    ),
  );
  const sheets = added
    .map(
      ({ name, hidden }, i) =>
        `<sheet name="${escapeXml(textInAttribute(name))}" sheetId="${lastId + 1 + i}"${hidden ? ' state="hidden"' : ""} ${prefix}:id="${ids[i]}"/>`,
    )
    .join("");
  const withSheets = must(appendedTo(start, "sheets", sheets));
  const withNames =
    names === ""
      ? withSheets
      : (appendedTo(withSheets, "definedNames", names) ??
        insertedAfter(
          withSheets,
          ["sheets", "functionGroups", "externalReferences"],
          `<definedNames>${names}</definedNames>`,
        ));
  const folder = workbookName.split("/").slice(0, -1).join("/");
  const relationships = added
    .map(
      ({ part }, i) =>
        `<Relationship Id="${ids[i]}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="${
          part.startsWith(`${folder}/`)
            ? part.slice(folder.length + 1)
            : `/${part}`
        }"/>`,
    )
    .join("");
  const rels = relationsName(workbookName);
  return {
    [workbookName]: partBytes(withNames),
    [rels]: partBytes(
      must(appendedTo(partText(parts, rels), "Relationships", relationships)),
    ),
  };
}

function freshIds(taken: readonly string[], count: number): readonly string[] {
  const ids: string[] = [];
  for (let n = 1; ids.length < count; n += 1)
    if (!taken.includes(`rId${n}`)) ids.push(`rId${n}`);
  return ids;
}

function must(xml: string | undefined): string {
  if (xml === undefined) throw new Error("the part has not the list it needs");
  return xml;
}
