import {
  useState,
  type CSSProperties,
  type PointerEvent as ReactPointerEvent,
  type ReactNode,
  type RefObject,
} from "react";

export type Side = "sheet" | "pane";

const NARROWEST = 320;
const WIDEST = 620;
const STEP = 20;

/**
 * The sheet and the pane side by side with a bar between them that mouse and arrow keys move; on a narrow screen one
 * at a time with two tabs at the foot.
 */
export function Split(props: {
  readonly grid: RefObject<HTMLDivElement>;
  readonly pane: ReactNode;
  readonly isPaneShown: boolean;
  /** Which of both a narrow screen shows. */
  readonly front: Side;
  readonly setFront: (side: Side) => void;
  /** While another book is being opened, nothing must be written to the one that goes. */
  readonly isOpening: boolean;
}): ReactNode {
  const [width, setWidth] = useState(380);
  const { front, setFront } = props;
  const to = (wanted: number): void =>
    setWidth(Math.min(WIDEST, Math.max(NARROWEST, Math.round(wanted))));
  const drag = (event: ReactPointerEvent): void => {
    if (event.buttons === 1) to(window.innerWidth - event.clientX);
  };
  return (
    <div
      className="workbench-split"
      data-front={front}
      data-pane={props.isPaneShown ? "shown" : "hidden"}
      style={{ "--pane-width": `${width}px` } as CSSProperties}
    >
      <main
        className="workbench-sheet"
        aria-label="Spreadsheet"
        id="sheet"
        tabIndex={-1}
      >
        <div ref={props.grid} className="workbench-grid" />
      </main>
      <div
        className="workbench-bar"
        role="separator"
        aria-label="Width of the pane"
        aria-orientation="vertical"
        aria-valuenow={width}
        aria-valuemin={NARROWEST}
        aria-valuemax={WIDEST}
        tabIndex={0}
        onPointerDown={(event) =>
          event.currentTarget.setPointerCapture(event.pointerId)
        }
        onPointerMove={drag}
        onKeyDown={(event) => {
          if (event.key === "ArrowLeft") to(width + STEP);
          if (event.key === "ArrowRight") to(width - STEP);
        }}
      />
      <aside
        {...(props.isOpening ? { inert: "" } : {})}
        className="workbench-pane"
        aria-label="Pane"
        id="pane"
        tabIndex={-1}
      >
        {props.pane}
      </aside>
      <nav className="workbench-front" aria-label="What is in front">
        {(["sheet", "pane"] as const).map((side) => (
          <button
            key={side}
            type="button"
            aria-pressed={front === side}
            className="workbench-front-button"
            onClick={() => setFront(side)}
          >
            {side === "sheet" ? "Sheet" : "Pane"}
          </button>
        ))}
      </nav>
    </div>
  );
}
