import { Suspense, useState, type ReactNode } from "react";
import {
  FluentProvider,
  Spinner,
  makeStyles,
  tokens,
} from "@fluentui/react-components";
import type { Host } from "../../hosts/host";
import { startOfCopies } from "./copies/copies-state";
import { VIEW_ID } from "./focus-view";
import { GoToProvider } from "./go-to";
import { startOfGuide } from "./guide/guide-state";
import { LastWriteBar, LastWriteProvider } from "./last-write";
import {
  CopiesView,
  FindingsView,
  GuideView,
  NewProductView,
  PriceListView,
  QuoteView,
  RunPlannerView,
  TotesView,
  WhyView,
  YearView,
} from "./lazy-views";
import { newestDay } from "./new-product/choices";
import { emptyDraft, type Draft } from "./new-product/draft";
import { useFindings } from "./findings/use-findings";
import { useOpenBook } from "./open-book";
import { PriceView } from "./price/price-view";
import { emptyRun } from "./run-planner/run-draft";
import { usePaneStyles } from "./styles";
import { Tabs } from "./tabs";
import { darkTheme, lightTheme } from "./theme";
import type { WorkOut } from "./work-out";

export interface PaneProps {
  readonly host: Host;
  readonly dark: boolean;
  /** Calls back after every change to the workbook; returns the way to stop. */
  readonly watchEdits: (listener: () => void) => () => void;
  /** Brings the sheet to the front where only one of both is seen. */
  readonly showSheet?: () => void;
  /** Works out a new workbook beside the open one; Excel does so itself when it opens the file. */
  readonly workOut?: WorkOut;
}

type View =
  | "price"
  | "copies"
  | "prices"
  | "run"
  | "quote"
  | "year"
  | "totes"
  | "why"
  | "findings"
  | "guide";

/** The pane beside a workbook. It knows only the port, so it is the same in the workbench and in Excel. */
export function Pane(props: PaneProps): ReactNode {
  const styles = useStyles();
  return (
    // The provider's own class would be put on every list it opens, so the looks sit one element further in.
    <FluentProvider
      theme={props.dark ? darkTheme : lightTheme}
      style={{ height: "100%" }}
    >
      <div className={styles.pane}>
        <LastWriteProvider>
          <GoToProvider host={props.host} showSheet={props.showSheet}>
            <Views {...props} />
          </GoToProvider>
        </LastWriteProvider>
      </div>
    </FluentProvider>
  );
}

function Views({ host, dark, watchEdits, workOut }: PaneProps): ReactNode {
  const styles = useStyles();
  const pane = usePaneStyles();
  const [view, setView] = useState<View>("price");
  const [product, setProduct] = useState<string>();
  const [draft, setDraft] = useState<Draft>();
  const [isNew, setIsNew] = useState(false);
  const [guide, setGuide] = useState(startOfGuide);
  const [run, setRun] = useState(emptyRun);
  const [copies, setCopies] = useState(startOfCopies);
  const { book, trouble } = useOpenBook(host, watchEdits);
  const findings = useFindings(book, view === "findings");
  return (
    <>
      <Tabs
        label="Views"
        tabs={[
          { value: "price", text: "Price a product" },
          { value: "prices", text: "Price list" },
          { value: "run", text: "Run planner" },
          { value: "quote", text: "Quote" },
          { value: "year", text: "Channels and years" },
          { value: "totes", text: "Totes" },
          { value: "copies", text: "Copies and seasons" },
          { value: "findings", text: "Findings", count: findings.length },
          { value: "why", text: "Why this cell" },
          { value: "guide", text: "Function guide" },
        ]}
        chosen={view}
        choose={setView}
      />
      <div
        id={VIEW_ID}
        role="tabpanel"
        aria-labelledby={`tab-${view}`}
        tabIndex={0}
        className={styles.panel}
      >
        <div className={pane.view}>
          {trouble && <p role="alert">{trouble}</p>}
          {!book && !trouble && <Spinner label="Reading the workbook …" />}
          <Suspense fallback={<Spinner label="Opening …" />}>
            {book && view === "price" && !(isNew && draft) && (
              <PriceView
                host={host}
                book={book}
                dark={dark}
                chosen={product}
                choose={setProduct}
                startNew={() => {
                  // What was typed before going back to the prices is still there.
                  setDraft(draft ?? emptyDraft(newestDay(book.tables)));
                  setIsNew(true);
                }}
              />
            )}
            {book && view === "price" && isNew && draft && (
              <NewProductView
                host={host}
                book={book}
                draft={draft}
                change={setDraft}
                leave={() => setIsNew(false)}
                done={(added) => {
                  setDraft(undefined);
                  setIsNew(false);
                  setProduct(added);
                }}
              />
            )}
            {book && view === "prices" && (
              <PriceListView
                host={host}
                book={book}
                dark={dark}
                open={(code) => {
                  setProduct(code);
                  setIsNew(false);
                  setView("price");
                }}
              />
            )}
            {book && view === "run" && (
              <RunPlannerView
                host={host}
                book={book}
                dark={dark}
                chosen={product}
                choose={setProduct}
                draft={run}
                change={setRun}
              />
            )}
            {book && view === "quote" && (
              <QuoteView
                host={host}
                book={book}
                chosen={product}
                choose={setProduct}
              />
            )}
            {book && view === "year" && (
              <YearView
                host={host}
                book={book}
                dark={dark}
                chosen={product}
                choose={setProduct}
              />
            )}
            {book && view === "totes" && <TotesView host={host} book={book} />}
            {book && view === "copies" && (
              <CopiesView
                host={host}
                book={book}
                state={copies}
                change={setCopies}
                workOut={workOut}
              />
            )}
            {book && view === "why" && <WhyView host={host} book={book} />}
            {book && view === "findings" && (
              <FindingsView book={book} findings={findings} />
            )}
            {book && view === "guide" && (
              <GuideView
                host={host}
                book={book}
                state={guide}
                change={setGuide}
              />
            )}
          </Suspense>
        </div>
      </div>
      <LastWriteBar />
    </>
  );
}

const useStyles = makeStyles({
  pane: {
    display: "flex",
    flexDirection: "column",
    height: "100%",
    minHeight: 0,
    // The tabs look at the pane's own width, which a bar in the workbench moves.
    containerType: "inline-size",
    containerName: "pane",
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
    fontSize: tokens.fontSizeBase300,
  },
  panel: { flexGrow: 1, minHeight: 0, overflowY: "auto" },
});
