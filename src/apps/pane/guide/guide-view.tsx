import { useRef, type ReactNode } from "react";
import { functionNamed } from "../../../functions";
import type { Host } from "../../../hosts/host";
import type { OpenBook } from "../open-book";
import { emptyFillIn } from "./fill-in";
import { FindView } from "./find-view";
import type { GuideState } from "./guide-state";
import { PageView } from "./page-view";

/** "Function guide": find the function that answers a question, read its page, put a call into a cell. */
export function GuideView(props: {
  readonly host: Host;
  readonly book: OpenBook;
  readonly state: GuideState;
  readonly change: (how: (state: GuideState) => GuideState) => void;
}): ReactNode {
  const { host, book, state, change } = props;
  const left = useRef<string>();
  const definition = state.open && functionNamed(state.open);
  if (!definition)
    return (
      <FindView
        words={state.words}
        setWords={(words) => change((now) => ({ ...now, words }))}
        comingFrom={left.current}
        open={(name) => change((now) => ({ ...now, open: name }))}
      />
    );
  const { name } = definition;
  left.current = name;
  return (
    <PageView
      key={name}
      host={host}
      book={book}
      definition={definition}
      fillIn={state.fillIns[name] ?? emptyFillIn}
      change={(how) =>
        change((now) => ({
          ...now,
          fillIns: {
            ...now.fillIns,
            [name]: how(now.fillIns[name] ?? emptyFillIn),
          },
        }))
      }
      back={() => change((now) => ({ ...now, open: undefined }))}
      hasSearched={state.words.trim() !== ""}
    />
  );
}
