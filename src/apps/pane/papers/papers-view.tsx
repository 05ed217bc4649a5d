import { useEffect, useMemo, useRef, useState, type ReactNode } from "react";
import { Button } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import { ChoiceField, TextField } from "../new-product/form-parts";
import { usePaneStyles } from "../styles";
import { paperAsked, type PaperKind, paperKinds } from "./asked";

/** "Print papers": one tote's weight ticket, bill of lading or label, shown as it will print. */
export function PapersView(props: { readonly book: Book }): ReactNode {
  const { book } = props;
  const pane = usePaneStyles();
  const tickets = useMemo(
    () => [...book.toteShipments].reverse().map(({ ticket }) => ticket),
    [book],
  );
  const [ticket, setTicket] = useState(tickets[0] ?? "");
  const [kind, setKind] = useState<PaperKind>("weight ticket");
  const [prefix, setPrefix] = useState("");
  const [item, setItem] = useState("");
  const draw = useBars();
  const frame = useRef<HTMLIFrameElement>(null);
  if (tickets.length === 0)
    return <p className={pane.quiet}>No tote has been sent out yet.</p>;
  const made = draw && paperAsked(book, { ticket, kind, prefix, item }, draw);
  return (
    <>
      <ChoiceField
        label="Tote"
        value={ticket}
        choices={tickets.map((one) => ({ value: one, text: one }))}
        change={setTicket}
      />
      <ChoiceField
        label="Paper"
        value={kind}
        choices={paperKinds}
        change={(value) =>
          setKind(paperKinds.find((one) => one.value === value)?.value ?? kind)
        }
      />
      {kind === "tote label" && (
        <>
          <TextField
            label="Company prefix"
            hint="For the tote's own number and its gross weight"
            value={prefix}
            change={setPrefix}
          />
          <TextField
            label="Item number of bulk syrup"
            hint="14 digits that begin with 9; for the net weight and the lot"
            value={item}
            change={setItem}
          />
        </>
      )}
      {made === undefined ? (
        <p role="status">Getting the paper ready …</p>
      ) : "trouble" in made ? (
        <p role="alert">{made.trouble}</p>
      ) : (
        <>
          <iframe
            ref={frame}
            title={made.paper.title}
            // No script of the page may run; the pane itself asks it to print.
            sandbox="allow-same-origin allow-modals"
            srcDoc={made.paper.page}
            style={{
              width: "100%",
              height: "420px",
              border: "1px solid #8a8886",
              background: "#fff",
            }}
          />
          <div className={pane.buttons}>
            <Button
              appearance="primary"
              onClick={() => frame.current?.contentWindow?.print()}
            >
              Print
            </Button>
            <Button onClick={() => savePage(made.paper.name, made.paper.page)}>
              Save the page
            </Button>
          </div>
        </>
      )}
    </>
  );
}

type Draw = Parameters<typeof paperAsked>[2];

/** The bar code library is large and comes only when papers are asked for. */
function useBars(): Draw | undefined {
  const [draw, setDraw] = useState<{ readonly bars: Draw }>();
  useEffect(() => {
    let isWanted = true;
    void import("../../tote-bars").then(({ toteBars }) => {
      if (isWanted) setDraw({ bars: toteBars });
    });
    return () => {
      isWanted = false;
    };
  }, []);
  return draw?.bars;
}

function savePage(name: string, page: string): void {
  const address = URL.createObjectURL(new Blob([page], { type: "text/html" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${name}.html`;
  link.click();
  // The browser needs the address until it has begun to write the file.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
