import { createContext, useContext, type ReactNode } from "react";
import type { CellPlace, Host } from "../../hosts/host";
import { useAnnounce } from "./last-write";
import { sentenceOf } from "./open-book";

type GoTo = (place: CellPlace) => void;

const Context = createContext<GoTo>(() => undefined);

/** Lets every view send the person to a cell; on a narrow screen the sheet then comes to the front. */
export function GoToProvider(props: {
  readonly host: Host;
  readonly showSheet?: (() => void) | undefined;
  readonly children: ReactNode;
}): ReactNode {
  const { host, showSheet, children } = props;
  const announce = useAnnounce();
  const goTo = (place: CellPlace): void => {
    host.select(place).then(
      () => showSheet?.(),
      // The sheet may have been taken out since the view was drawn.
      (problem: unknown) => announce({ says: sentenceOf(problem) }),
    );
  };
  return <Context.Provider value={goTo}>{children}</Context.Provider>;
}

export const useGoTo = (): GoTo => useContext(Context);
