import { useEffect, useRef, useState, type ReactNode } from "react";
import {
  Button,
  MessageBar,
  MessageBarBody,
  useId,
} from "@fluentui/react-components";
import type { Definition } from "../../../functions/define";
import type { Host } from "../../../hosts/host";
import { useGoTo } from "../go-to";
import { useAnnounce } from "../last-write";
import { sentenceOf } from "../open-book";
import { usePaneStyles } from "../styles";
import type { Landing } from "./landing";
import type { Preview } from "./preview";
import { put, whyNot } from "./put";
import { PutQuestion } from "./put-question";
import { inWords } from "./reference";
import type { Shown } from "./use-preview";

/** The button that writes the formula into its cell. It asks before anything that stands there goes. */
export function PutView(props: {
  readonly host: Host;
  readonly definition: Definition;
  readonly shown: Shown;
  /** The form as it stands this very moment, which a person may press the button with. */
  readonly lookAgain: () => Promise<Shown>;
  readonly goToArgument: (name: string) => void;
}): ReactNode {
  const { host, definition, shown, lookAgain, goToArgument } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const goTo = useGoTo();
  const button = useId("put");
  const [asking, setAsking] = useState<Ready>();
  const [isBusy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  const place = readyIn(shown)?.landing.place;
  const where = place && inWords({ ...place, rows: 1, columns: 1 });
  const formula = shown.preview?.formula;
  useEffect(() => {
    setAsking(undefined);
    setTrouble(undefined);
  }, [formula, where]);
  // The question took the keyboard; once answered, the button it stood for takes it back.
  const isAnswered = useRef(false);
  useEffect(() => {
    if (isAnswered.current && !asking) document.getElementById(button)?.focus();
    isAnswered.current = false;
  }, [asking, button]);

  const during = async (how: () => Promise<void>): Promise<void> => {
    if (isBusy) return;
    setBusy(true);
    setTrouble(undefined);
    try {
      await how();
    } catch (problem) {
      setTrouble(sentenceOf(problem));
    } finally {
      setBusy(false);
    }
  };
  const write = async ({ preview, landing }: Ready): Promise<void> =>
    announce(await put(host, definition, preview, landing));
  const press = (): Promise<void> =>
    during(async () => {
      const now = await lookAgain();
      const why = whyNot(definition, now);
      setTrouble(why?.says);
      if (why?.argument !== undefined) goToArgument(why.argument);
      const ready = readyIn(now);
      if (why || !ready) return;
      if (ready.landing.holds === undefined) await write(ready);
      else setAsking(ready);
    });
  const answer = (isYes: boolean): void => {
    isAnswered.current = true;
    setAsking(undefined);
    if (isYes && asking) void during(() => write(asking));
  };
  return (
    <>
      {trouble && (
        <div role="alert">
          <MessageBar intent="error" layout="multiline">
            <MessageBarBody>{trouble}</MessageBarBody>
          </MessageBar>
        </div>
      )}
      {asking ? (
        <PutQuestion
          says={`${where} holds ${asking.landing.holds}. Shall the formula go over it?`}
          answer={answer}
        />
      ) : (
        <div className={pane.buttons}>
          <Button
            id={button}
            appearance="primary"
            disabledFocusable={isBusy}
            onClick={() => void press()}
          >
            {where ? `Put it into ${where}` : "Put it into the cell"}
          </Button>
          {place && <Button onClick={() => goTo(place)}>Show the cell</Button>}
        </div>
      )}
    </>
  );
}

interface Ready {
  readonly preview: Preview;
  readonly landing: Landing;
}

const readyIn = ({ preview, landing }: Shown): Ready | undefined =>
  preview && typeof landing === "object" ? { preview, landing } : undefined;
