import type { ReactNode } from "react";
import {
  Button,
  Dialog,
  DialogActions,
  DialogBody,
  DialogContent,
  DialogSurface,
  DialogTitle,
} from "@fluentui/react-components";

export interface Answer {
  readonly says: string;
  readonly then: () => void;
  readonly isMain?: true;
}

/**
 * A question that must be answered before going on; Escape and the last answer both mean "leave it". It stays in the
 * page and is opened and closed: taken out while open, it would leave the rest of the page hidden from screen readers.
 */
export function AskDialog(props: {
  readonly isOpen: boolean;
  readonly title: string;
  readonly children: ReactNode;
  readonly answers: readonly Answer[];
  readonly leave: () => void;
}): ReactNode {
  return (
    <Dialog
      open={props.isOpen}
      modalType="alert"
      onOpenChange={(_, { open }) => {
        if (!open) props.leave();
      }}
    >
      <DialogSurface>
        <DialogBody>
          <DialogTitle>{props.title}</DialogTitle>
          <DialogContent>{props.children}</DialogContent>
          <DialogActions fluid>
            {props.answers.map(({ says, then, isMain }) => (
              <Button
                key={says}
                appearance={isMain ? "primary" : "secondary"}
                onClick={() => {
                  props.leave();
                  then();
                }}
              >
                {says}
              </Button>
            ))}
            <Button appearance="secondary" onClick={props.leave}>
              Cancel
            </Button>
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}
