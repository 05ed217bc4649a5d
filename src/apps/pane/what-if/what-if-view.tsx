import { useEffect, useState, type ReactNode } from "react";
import { Button, Spinner } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import type { CellValue } from "../../../sheets/workbook";
import { useGoTo } from "../go-to";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { MarginPicture } from "./margin-picture";
import { NoticeFigures } from "./notice-figures";
import { readWhatIf, type Turned, type WhatIf } from "./what-if";
import { WhatMoves } from "./what-moves";
import { FallingList } from "./falling-list";

/** "What if": bulk, wages or glass move; which prices no longer hold, and what would. */
export function WhatIfView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly dark: boolean;
}): ReactNode {
  const { host, book, dark } = props;
  const pane = usePaneStyles();
  const goTo = useGoTo();
  const announce = useAnnounce();
  const { held, trouble, isReading } = useWhatIf(host, book);
  if (trouble) return <p role="alert">{trouble}</p>;
  if (isReading) return <Spinner size="small" label="Reading the sheet …" />;
  if (!held)
    return (
      <p className={pane.plain}>
        The sheet “What if” is gone from this workbook. Delete “Price list” and
        “Price working” and build the price list anew to have it again.
      </p>
    );
  const write = async (
    key: Turned,
    value: CellValue,
    says: string,
  ): Promise<void> => {
    const { place, value: before } = held.inputs[key];
    await host.setCell(place, value);
    announce({
      says,
      takeBack: async () => {
        await host.setCell(place, typeof before === "object" ? null : before);
        return "the what-if sheet holds what it held.";
      },
    });
  };
  const drawn = held.products.find(
    ({ product }) => product === String(held.inputs.drawn.value ?? ""),
  );
  return (
    <>
      <WhatMoves book={book} whatIf={held} write={write} />
      <div>
        {held.glance.map(({ what, says }) => (
          <p key={what} className={pane.plain}>
            {what}: <strong>{says}</strong>
          </p>
        ))}
      </div>
      {drawn && (
        <Section title={`${drawn.product} when bulk moves`}>
          <MarginPicture whatIf={held} drawn={drawn} dark={dark} />
          <NoticeFigures drawn={drawn} />
        </Section>
      )}
      <FallingList
        products={held.products}
        choose={(product) =>
          write("drawn", product, `The picture shows ${product}.`)
        }
      />
      <Button onClick={() => goTo({ sheet: held.sheet, row: 0, column: 0 })}>
        Go to the sheet “{held.sheet}”
      </Button>
    </>
  );
}

function useWhatIf(
  host: Host,
  book: OpenBook,
): {
  readonly held: WhatIf | undefined;
  readonly trouble: string | undefined;
  readonly isReading: boolean;
} {
  const [read, setRead] = useState<{
    readonly held?: WhatIf | undefined;
    readonly trouble?: string;
  }>();
  useEffect(() => {
    let isLate = false;
    readWhatIf(host, book.names).then(
      (held) => !isLate && setRead({ held }),
      (problem: unknown) =>
        !isLate && setRead({ trouble: sentenceOf(problem) }),
    );
    return () => {
      isLate = true;
    };
  }, [host, book]);
  return {
    held: read?.held,
    trouble: read?.trouble,
    isReading: read === undefined,
  };
}
