import { useEffect, useState, type ReactNode } from "react";
import {
  Button,
  MessageBar,
  MessageBarBody,
  MessageBarTitle,
} from "@fluentui/react-components";
import type { CellFacts, Host } from "../../../hosts/host";
import { useGoTo } from "../go-to";
import { sentence } from "../sentence";
import type { Costing } from "./costing";

/** Names what is missing. While something is missing there is no total, on the sheet or here. */
export function Withheld(props: {
  readonly host: Host;
  readonly costing: Costing;
  readonly isWithheld: boolean;
}): ReactNode {
  const { host, costing, isWithheld } = props;
  const total = costing.figure.full_replacement;
  const missing = costing.figure.missing?.value;
  const goTo = useGoTo();
  const [facts, setFacts] = useState<CellFacts>();
  useEffect(() => {
    let isLate = false;
    if (isWithheld && total)
      host.readCell(total.place).then(
        (read) => !isLate && setFacts(read),
        () => undefined,
      );
    return () => {
      isLate = true;
    };
  }, [host, isWithheld, total]);
  // The sheet strings them together: "a bulk price for Oak; caps; ".
  const named =
    typeof missing === "string"
      ? missing
          .split(";")
          .map((part) => part.trim())
          .filter(Boolean)
          .join("; ")
      : "";
  if (!isWithheld && named === "") return null;
  return (
    <MessageBar intent="warning" layout="multiline">
      <MessageBarBody>
        <MessageBarTitle>
          {isWithheld ? "The total is withheld" : "Something is missing"}
        </MessageBarTitle>{" "}
        {named !== ""
          ? `The book needs ${named}.`
          : facts?.refusal
            ? sentence(facts.refusal)
            : "The sheet cannot work out a cost. Its own checks say why."}
      </MessageBarBody>
      {total && (
        <Button
          size="small"
          onClick={() => goTo(total.place)}
          style={{ gridArea: "secondaryActions", justifySelf: "end" }}
        >
          Show me the cell
        </Button>
      )}
    </MessageBar>
  );
}
