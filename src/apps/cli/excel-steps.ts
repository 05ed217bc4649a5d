/** How to load the served add-in into Excel, line by line; the menu names are Excel's own of 2026. */
export const sideloadSteps = (served: {
  readonly base: string;
  readonly manifest: string;
  readonly trust: string | undefined;
}): readonly string[] => [
  `Tare & Tally for Excel: ${served.base} (stop with Ctrl+C)`,
  `Manifest: ${served.manifest}`,
  ...trustSteps(served.trust),
  "",
  "Windows: share the folder of the manifest (its Properties, Sharing), then in Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs: add the shared folder's network path and tick Show in Menu. Start Excel again; Home, Add-ins, More Add-ins, Shared Folder, Tare & Tally.",
  "",
  "Mac: copy the manifest into ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the folder wef if it is missing). Start Excel again; Home, Add-ins, Tare & Tally under Developer Add-ins.",
  "",
  "Web: open a workbook in Excel on the web; Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in, the manifest. If the browser asks whether the page may reach this machine, allow it.",
  "",
  "Then type =SYRUP.POUNDS_PER_GALLON(66.9) in a cell: 11.076 and more digits. docs/excel-checklist.md goes through the rest; docs/install.md says how to take it out again.",
];

const trustSteps = (trust: string | undefined): readonly string[] =>
  trust === undefined
    ? []
    : [
        `This machine does not trust the certificate yet: stop this, run \`${trust}\` once, and start again. Until then Excel shows an empty pane.`,
      ];
