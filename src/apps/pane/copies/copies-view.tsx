import type { ReactNode } from "react";
import type { Host } from "../../../hosts/host";
import { BinderView } from "../binder/binder-view";
import { HandoverView } from "../handover/handover-view";
import type { OpenBook } from "../open-book";
import { ReturnedView } from "../returned/returned-view";
import { SeasonView } from "../season/season-view";
import { Tabs } from "../tabs";
import type { WorkOut } from "../work-out";
import type { CopiesState } from "./copies-state";

/** "Copies and seasons": what leaves the house as a file of its own, and what comes back. */
export function CopiesView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly state: CopiesState;
  readonly change: (state: CopiesState) => void;
  readonly workOut: WorkOut | undefined;
}): ReactNode {
  const { host, book, state, change, workOut } = props;
  const { part, trip } = state;
  return (
    <>
      <Tabs
        label="Copies and seasons"
        tabs={[
          { value: "handover", text: "Hand over a copy" },
          { value: "returned", text: "A copy came back" },
          { value: "season", text: "New season" },
          { value: "binder", text: "Audit binder" },
        ]}
        chosen={part}
        choose={(chosen) => change({ ...state, part: chosen })}
      />
      {part === "handover" && <HandoverView host={host} book={book} />}
      {part === "returned" && (
        <ReturnedView
          host={host}
          book={book}
          trip={trip}
          change={(next) => change({ ...state, trip: next })}
        />
      )}
      {part === "season" && (
        <SeasonView host={host} book={book} workOut={workOut} />
      )}
      {part === "binder" && (
        <BinderView host={host} book={book} workOut={workOut} />
      )}
    </>
  );
}
