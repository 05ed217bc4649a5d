import type { BookState } from "./book-state";
import { badArgument, type WireObject } from "./wire-object";

/** The parts of foreign XML that travel in the workbook's file. */
export function customXmlObjects({ xmlParts }: BookState): WireObject {
  const object = (part: { id: string; xml: string }): WireObject => ({
    kind: "CustomXmlPart",
    get: { Id: () => part.id },
    call: {
      GetXml: () => part.xml,
      SetXml: (xml: string) => {
        part.xml = wellFormed(xml);
      },
      Delete: () => void xmlParts.splice(xmlParts.indexOf(part), 1),
    },
  });
  return {
    kind: "CustomXmlPartCollection",
    open: {
      Add: (xml: string) => {
        const part = {
          id: `{part-${xmlParts.length + 1}}`,
          xml: wellFormed(xml),
        };
        xmlParts.push(part);
        return object(part);
      },
      GetByNamespace: (namespace: string) => ({
        kind: "CustomXmlPartScopedCollection",
        call: {
          GetCount: () =>
            xmlParts.filter(({ xml }) => xml.includes(`xmlns="${namespace}"`))
              .length,
        },
        open: {
          GetOnlyItemOrNullObject: () => {
            const held = xmlParts.filter(({ xml }) =>
              xml.includes(`xmlns="${namespace}"`),
            );
            const [only, ...more] = held;
            return only && more.length === 0 ? object(only) : null;
          },
        },
      }),
    },
  };
}

/** Enough of a parser to refuse text that was not escaped. */
function wellFormed(xml: string): string {
  const text = xml.replace(
    /<\?[^>]*\?>|<\/?[A-Za-z][\w.:-]*(\s+[\w:-]+="[^"<]*")*\s*\/?>/g,
    "",
  );
  if (/[<]|&(?!(amp|lt|gt|quot|apos|#\d+|#x[\dA-Fa-f]+);)/.test(text))
    throw badArgument("the XML is not well formed");
  return xml;
}
