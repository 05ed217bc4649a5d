import type { ReactNode } from "react";
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import type { Stored } from "../../../sheets/workbook";
import type { YearsKey } from "../../../sheets/year-to-year/years-sheet";
import { perBottle } from "../money";
import { Pair } from "../pair";
import { pictureColors } from "../pictures/picture-colors";
import { Section } from "../section";
import { sentence } from "../sentence";
import { usePaneStyles } from "../styles";
import { type Figures, isNumber, openChecks, words } from "./figures";
import { InputField } from "./input-field";
import { typedYear } from "./typed";

/** What a bottle cost in two seasons and what the change is made of, read from the sheet. */
export function YearsPart(props: {
  readonly host: Host;
  readonly figures: Figures<YearsKey>;
  readonly dark: boolean;
}): ReactNode {
  const { host, figures, dark } = props;
  const pane = usePaneStyles();
  const steps = figures.rows("steps");
  const sides = figures.rows("sides");
  const checks = openChecks(figures.rows("checks"));
  const told = checks[0]?.says ?? "";
  const isTold = isNumber(steps.at(-1)?.[1]);
  return (
    <>
      <div className={pane.card}>
        <Pair>
          <InputField
            host={host}
            label="Season"
            value={figures.value("season")}
            place={figures.place("season")}
            read={typedYear}
          />
          <InputField
            host={host}
            label="Against"
            value={figures.value("against")}
            place={figures.place("against")}
            read={typedYear}
          />
        </Pair>
      </div>
      <p className={pane.plain}>{sentence(told)}</p>
      {checks.slice(1).map(({ what, says }) =>
        says === "withheld" ? null : (
          <p key={what} className={pane.quiet}>
            {sentence(says)}
          </p>
        ),
      )}
      {isTold && (
        <>
          <Section title="What the change is made of">
            <Steps steps={steps} dark={dark} />
          </Section>
          <Section title="A bottle in each season">
            <ul className={pane.list}>
              {sides.slice(4).map((side) => (
                <li key={words(side[0])} className={pane.row}>
                  <span>{words(side[0])}</span>
                  <span className={pane.numeric}>
                    {perBottle(side[1])} → {perBottle(side[2])}
                  </span>
                </li>
              ))}
            </ul>
          </Section>
        </>
      )}
    </>
  );
}

/** Each step as a bar to the left or right of nothing, with its cents beside it. */
function Steps(props: {
  readonly steps: readonly (readonly Stored[])[];
  readonly dark: boolean;
}): ReactNode {
  const pane = usePaneStyles();
  const styles = useStyles();
  const [dearer = "", cheaper = ""] = pictureColors(props.dark);
  const known = props.steps.flatMap(([name, change]) =>
    isNumber(change) ? [{ name: words(name), change }] : [],
  );
  const most = Math.max(1e-9, ...known.map(({ change }) => Math.abs(change)));
  return (
    <ul className={pane.list}>
      {known.map(({ name, change }, i) => (
        <li key={name}>
          <div className={pane.row}>
            {i === known.length - 1 ? (
              <strong>{name}</strong>
            ) : (
              <span>{name}</span>
            )}
            <span className={pane.numeric}>{cents(change)}</span>
          </div>
          <div className={styles.ground} aria-hidden="true">
            <div
              className={styles.bar}
              style={{
                width: `${(Math.abs(change) / most) * 50}%`,
                marginLeft: `${change < 0 ? 50 - (Math.abs(change) / most) * 50 : 50}%`,
                backgroundColor: change < 0 ? cheaper : dearer,
              }}
            />
          </div>
        </li>
      ))}
    </ul>
  );
}

function cents(change: number): string {
  const size = Math.abs(change * 100).toFixed(1);
  return size === "0.0"
    ? "no change"
    : `${size} ¢ ${change < 0 ? "less" : "more"}`;
}

const useStyles = makeStyles({
  ground: {
    height: "8px",
    borderRadius: "4px",
    overflow: "hidden",
    backgroundColor: tokens.colorNeutralBackground3,
  },
  bar: { height: "100%", minWidth: "2px" },
});
