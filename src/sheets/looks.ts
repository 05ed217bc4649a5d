import type { CellStyle } from "./workbook";

/** What a cell is for; the look follows from it. Only `input` cells are typed in. */
export type Role =
  | "title"
  | "heading"
  | "label"
  | "unit"
  | "input"
  | "calculated"
  | "result"
  | "check"
  | "note"
  | "aside"
  | "subheading";

const ink = "#2b2620";
const quiet = "#6b6257";
const rule = "#d8cfc2";

const looks: Readonly<Record<Role, CellStyle>> = {
  title: { bold: true, size: 16, color: "#4a2c17" },
  heading: { bold: true, color: "#ffffff", fill: "#5b3a21" },
  label: { color: ink },
  unit: { color: quiet, italic: true },
  input: {
    color: "#123a7a",
    fill: "#fff6d8",
    edges: {
      top: "thin",
      bottom: "thin",
      left: "thin",
      right: "thin",
      color: rule,
    },
  },
  calculated: { color: ink },
  result: {
    color: ink,
    bold: true,
    fill: "#f1e8dc",
    edges: { top: "thin", color: "#a58a6d" },
  },
  check: { color: "#24543a", bold: true },
  note: { color: quiet, italic: true, wrap: true },
  aside: { color: quiet, italic: true },
  subheading: {
    bold: true,
    color: "#4a2c17",
    fill: "#eadfd0",
    wrap: true,
    edges: { bottom: "thin", color: "#a58a6d" },
  },
};

/** The look of a role; a number format may be given with it. */
export const look = (role: Role, format?: string): CellStyle =>
  format === undefined ? looks[role] : { ...looks[role], format };
