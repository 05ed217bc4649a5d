import { useEffect, useRef, useState, type ReactNode } from "react";
import type { GridHost } from "../../hosts/grid/open-grid";
import { Pane } from "../pane/pane";
import { Header } from "./header";
import { Notices } from "./notices";
import { useSession } from "./session";
import { Split, type Side } from "./split";
import { useDark } from "./use-dark";
import { workOut } from "./work-out";

/** The page: a header, the sheet, and the pane beside it. */
export function Workbench(): ReactNode {
  const grid = useRef<HTMLDivElement>(null);
  const [dark, setDark] = useDark();
  const [isPaneShown, showPane] = useState(true);
  const [front, setFront] = useState<Side>("sheet");
  const session = useSession(grid, dark);
  useEffect(() => {
    document.title = session.title
      ? `${session.title} – Tare & Tally`
      : "Tare & Tally";
  }, [session.title]);
  useSwitchSides();
  return (
    <div className="workbench">
      <Header
        session={session}
        dark={dark}
        setDark={setDark}
        isPaneShown={isPaneShown}
        showPane={showPane}
      />
      <Notices session={session} dark={dark} />
      <Split
        grid={grid}
        isPaneShown={isPaneShown}
        front={front}
        setFront={setFront}
        isOpening={session.isOpening}
        pane={
          session.host && (
            <OpenPane
              key={session.opening}
              host={session.host}
              dark={dark}
              showSheet={() => setFront("sheet")}
            />
          )
        }
      />
    </div>
  );
}

/** Another book starts the pane afresh: a product picked in one farm's book means nothing in another's. */
function OpenPane(props: {
  readonly host: GridHost;
  readonly dark: boolean;
  readonly showSheet: () => void;
}): ReactNode {
  const { host, dark, showSheet } = props;
  const [watchEdits] = useState(
    () => (listener: () => void) => host.onEdit(listener),
  );
  return (
    <Pane
      host={host}
      dark={dark}
      watchEdits={watchEdits}
      showSheet={showSheet}
      workOut={workOut}
    />
  );
}

/** The grid keeps Tab for itself, so F6 goes from the sheet to the pane and back. */
function useSwitchSides(): void {
  useEffect(() => {
    const switchSides = (event: KeyboardEvent): void => {
      if (event.key !== "F6") return;
      event.preventDefault();
      const pane = document.getElementById("pane");
      const isInPane = pane?.contains(document.activeElement) ?? false;
      if (isInPane) {
        document.getElementById("sheet")?.focus();
        document
          .querySelector<HTMLElement>("#sheet [contenteditable]")
          ?.focus();
      } else
        (
          pane?.querySelector<HTMLElement>(
            '[role="tab"][aria-selected="true"]',
          ) ?? pane
        )?.focus();
    };
    addEventListener("keydown", switchSides, true);
    return () => removeEventListener("keydown", switchSides, true);
  }, []);
}
