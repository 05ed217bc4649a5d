import { useRef, type KeyboardEvent, type ReactNode } from "react";
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";

export interface TabChoice<V extends string> {
  readonly value: V;
  readonly text: string;
  /** A number to show beside it; none for zero. */
  readonly count?: number;
}

/**
 * Tabs as the pattern for them asks: one stop for Tab, arrows, Home and End inside. Ours, because the toolkit's own
 * puts unseen focusable marks round its tabs, which screen-reader checks rightly dislike.
 */
export function Tabs<V extends string>(props: {
  readonly label: string;
  readonly tabs: readonly TabChoice<V>[];
  readonly chosen: V;
  readonly choose: (value: V) => void;
}): ReactNode {
  const { label, tabs, chosen, choose } = props;
  const styles = useStyles();
  const list = useRef<HTMLDivElement>(null);
  const step = (event: KeyboardEvent): void => {
    const at = tabs.findIndex(({ value }) => value === chosen);
    const to = {
      ArrowRight: (at + 1) % tabs.length,
      ArrowLeft: (at - 1 + tabs.length) % tabs.length,
      Home: 0,
      End: tabs.length - 1,
    }[event.key];
    const next = to === undefined ? undefined : tabs[to];
    if (!next) return;
    event.preventDefault();
    choose(next.value);
    list.current?.querySelector<HTMLElement>(`#tab-${next.value}`)?.focus();
  };
  return (
    <div
      ref={list}
      role="tablist"
      aria-label={label}
      className={styles.list}
      onKeyDown={step}
    >
      {tabs.map(({ value, text, count = 0 }) => (
        <button
          key={value}
          id={`tab-${value}`}
          type="button"
          role="tab"
          aria-selected={value === chosen}
          tabIndex={value === chosen ? 0 : -1}
          className={mergeClasses(
            styles.tab,
            value === chosen && styles.chosen,
          )}
          onClick={() => choose(value)}
        >
          {text}
          {count > 0 && <span className={styles.count}>{count}</span>}
        </button>
      ))}
    </div>
  );
}

const NARROW = "@container pane (max-width: 460px)";

const useStyles = makeStyles({
  list: {
    display: "flex",
    flexShrink: 0,
    // As many to a row as fit: the views are many, and all of them in sight are found faster than behind a menu.
    flexWrap: "wrap",
    columnGap: "4px",
    padding: "4px 10px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground2,
    [NARROW]: { columnGap: "2px", padding: "3px 7px 0" },
  },
  tab: {
    padding: "6px 7px 4px",
    border: "none",
    borderBottom: "3px solid transparent",
    backgroundColor: "transparent",
    color: tokens.colorNeutralForeground2,
    fontFamily: "inherit",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    whiteSpace: "nowrap",
    cursor: "pointer",
    ":hover": { color: tokens.colorNeutralForeground1 },
    ":focus-visible": {
      outline: `2px solid ${tokens.colorStrokeFocus2}`,
      outlineOffset: "-2px",
      borderRadius: "4px",
    },
    // Tall enough to touch; 24 px is the least the guidelines ask.
    [NARROW]: { padding: "5px 5px 2px" },
  },
  chosen: {
    color: tokens.colorNeutralForeground1,
    fontWeight: tokens.fontWeightSemibold,
    borderBottomColor: tokens.colorBrandStroke1,
  },
  count: {
    display: "inline-block",
    marginLeft: "5px",
    padding: "0 5px",
    borderRadius: "8px",
    fontSize: tokens.fontSizeBase100,
    lineHeight: "16px",
    fontWeight: tokens.fontWeightRegular,
    backgroundColor: tokens.colorBrandBackground,
    color: tokens.colorNeutralForegroundOnBrand,
  },
});
