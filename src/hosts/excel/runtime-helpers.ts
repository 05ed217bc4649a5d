import {
  HostType,
  PlatformType,
  Utilities,
} from "@microsoft/office-js-helpers";

/**
 * Where the page runs, in plain words for a report of trouble: "Excel on the web". Right only once Excel is ready. This
 * is all that is taken from Microsoft's helper package (docs/decisions.md says why), and only this file may import it.
 */
export function whereItRuns(): string {
  if (!Utilities.isAddin) return "a browser without Excel";
  const program =
    Utilities.host === HostType.EXCEL ? "Excel" : "an Office program";
  const on = ON[Utilities.platform];
  return on === undefined ? program : `${program} ${on}`;
}

const ON: Readonly<Record<string, string>> = {
  [PlatformType.PC]: "on Windows",
  [PlatformType.MAC]: "on Mac",
  [PlatformType.OFFICE_ONLINE]: "on the web",
  [PlatformType.IOS]: "on iPad",
};
