import { useEffect, useRef, type ReactNode } from "react";
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { Definition } from "../../../functions/define";
import { givesWords } from "../../../functions/page";
import type { Host } from "../../../hosts/host";
import type { OpenBook } from "../open-book";
import { usePaneStyles } from "../styles";
import { serif } from "../theme";
import type { FillIn } from "./fill-in";
import { FillInView } from "./fill-in-view";
import { PageParts } from "./page-parts";

/** The page of one function, all of it from its definition, with the form that puts it into a cell. */
export function PageView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly definition: Definition;
  readonly fillIn: FillIn;
  readonly change: (how: (fillIn: FillIn) => FillIn) => void;
  readonly back: () => void;
  readonly hasSearched: boolean;
}): ReactNode {
  const { definition, back, hasSearched, change } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.closest("[role=tabpanel]")?.scrollTo?.({ top: 0 });
  }, []);
  return (
    <>
      <div className={styles.top}>
        <Button
          appearance="transparent"
          size="small"
          className={styles.back}
          onClick={back}
        >
          {hasSearched ? "Back to what was found" : "Back to every question"}
        </Button>
        <p className={styles.name}>SYRUP.{definition.name}</p>
        <h2 ref={heading} tabIndex={-1} className={styles.question}>
          {definition.question}
        </h2>
        <p className={pane.plain}>{definition.summary}</p>
        <p className={pane.quiet}>{givesWords(definition)}</p>
      </div>
      {definition.caution && (
        <p role="note" className={styles.caution}>
          <strong>Caution. </strong>
          {definition.caution}
        </p>
      )}
      <FillInView {...props} />
      <PageParts
        definition={definition}
        useExample={(typed) => change((now) => ({ ...now, typed }))}
      />
    </>
  );
}

const useStyles = makeStyles({
  top: { display: "flex", flexDirection: "column", gap: "4px" },
  back: {
    alignSelf: "flex-start",
    padding: 0,
    minWidth: 0,
    minHeight: "24px",
    marginBottom: "4px",
    color: tokens.colorBrandForegroundLink,
    textDecorationLine: "underline",
    textUnderlineOffset: "3px",
    fontWeight: tokens.fontWeightRegular,
  },
  name: {
    margin: 0,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    color: tokens.colorNeutralForeground3,
    overflowWrap: "anywhere",
  },
  question: {
    margin: 0,
    fontFamily: serif,
    fontSize: "20px",
    lineHeight: "26px",
    fontWeight: tokens.fontWeightSemibold,
    ":focus": { outline: "none" },
  },
  caution: {
    margin: 0,
    padding: "10px 12px",
    borderRadius: "8px",
    borderLeft: `4px solid ${tokens.colorPaletteDarkOrangeBorder2}`,
    backgroundColor: tokens.colorNeutralBackground2,
    lineHeight: tokens.lineHeightBase300,
  },
});
