import type { ReactNode } from "react";
import type { CellPlace, Host } from "../../../hosts/host";
import { cellAddress } from "../../../sheets/address";
import type { CellValue, Stored } from "../../../sheets/workbook";
import { CommitField } from "../commit-field";
import { useAnnounce } from "../last-write";

/** A field for one input cell; it says which cell it writes and offers to put the old value back. */
export function InputField(props: {
  readonly host: Host;
  readonly label: string;
  readonly value: Stored;
  readonly place: CellPlace | undefined;
  readonly unit?: string;
  readonly show?: (value: number) => string;
  readonly read: (typed: string) => CellValue;
}): ReactNode {
  const { host, label, value, place, unit, read } = props;
  const announce = useAnnounce();
  if (!place) return null;
  const at = `${place.sheet}, ${cellAddress(place.row, place.column)}`;
  const show = props.show ?? String;
  return (
    <CommitField
      label={label}
      hint={`Writes ${at}`}
      shown={
        typeof value === "number"
          ? show(value)
          : typeof value === "string"
            ? value
            : ""
      }
      {...(unit === undefined ? {} : { unit })}
      read={read}
      write={async (next) => {
        await host.setCell(place, next);
        const old = typeof value === "object" ? null : value;
        announce({
          says: `${label}: ${next === null ? "blank" : String(next)}.`,
          takeBack: async () => {
            await host.setCell(place, old);
            return `${at} holds ${old === null ? "nothing" : String(old)} again.`;
          },
        });
      }}
    />
  );
}
