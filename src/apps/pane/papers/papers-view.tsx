import { useEffect, useMemo, useRef, useState, type ReactNode } from "react";
import { Button } from "@fluentui/react-components";
import type { Book } from "../../../book/book";
import { download } from "../download";
import { ChoiceField, TextField } from "../new-product/form-parts";
import { usePaneStyles } from "../styles";
import { farmCodes } from "../../../sheets/papers/tote-codes";
import {
  type Language,
  languages,
  languageWords,
} from "../../../sheets/words/language";
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
  const [prefix, setPrefix] = useState(() => farmCodes(book).prefix ?? "");
  const [item, setItem] = useState(() => farmCodes(book).item ?? "");
  const [serial, setSerial] = useState("");
  const [language, setLanguage] = useState<Language>("en");
  const draw = useBars();
  const frame = useRef<HTMLIFrameElement>(null);
  if (tickets.length === 0)
    return <p className={pane.quiet}>No tote has been sent out yet.</p>;
  const made =
    draw &&
    paperAsked(book, { ticket, kind, prefix, item, serial, language }, draw);
  return (
    <>
      <ChoiceField
        label="Tote"
        value={ticket}
        choices={tickets.map((one) => ({ value: one, text: one }))}
        change={(one) => {
          setTicket(one);
          setSerial("");
        }}
      />
      <ChoiceField
        label="Paper"
        value={kind}
        choices={paperKinds}
        change={(value) =>
          setKind(paperKinds.find((one) => one.value === value)?.value ?? kind)
        }
      />
      <ChoiceField
        label="Language"
        value={language}
        choices={languages.map((one) => ({
          value: one,
          text: languageWords[one],
        }))}
        change={(value) =>
          setLanguage(languages.find((one) => one === value) ?? language)
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
          <TextField
            label="Serial of the tote"
            hint="Blank: the digits of its ticket"
            value={serial}
            change={setSerial}
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
            onLoad={({ currentTarget }) => showWhole(currentTarget)}
            style={{
              width: "100%",
              minHeight: "420px",
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

/** The whole paper is seen without a second bar to scroll by. */
function showWhole(frame: HTMLIFrameElement): void {
  frame.style.height = "";
  const height = frame.contentDocument?.documentElement.scrollHeight ?? 0;
  if (height > 0) frame.style.height = `${height + 2}px`;
}

function savePage(name: string, page: string): void {
  download(`${name}.html`, page, "text/html");
}
