import type { Language } from "../words/language";
import { html, type Markup } from "./markup";

/** One printable page. */
export interface Paper {
  /** "weight-ticket-T-044": a file name without its ending. */
  readonly name: string;
  readonly title: string;
  /** A whole page of its own, nothing fetched, nothing run. */
  readonly page: string;
}

/** A sheet of paper: portrait letter, or half a letter sheet lying, as labels are cut. */
export type PaperSize = "letter" | "half letter";

const SIZES: Readonly<Record<PaperSize, string>> = {
  letter: "8.5in 11in",
  "half letter": "8.5in 5.5in",
};

export function paper(
  what: {
    readonly name: string;
    readonly title: string;
    readonly size: PaperSize;
    readonly language: Language;
  },
  body: Markup,
): Paper {
  const { markup } = html`<!doctype html>
    <html lang="${what.language}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta
          http-equiv="Content-Security-Policy"
          content="default-src 'none'; style-src 'unsafe-inline'"
        />
        <title>${what.title}</title>
        <style>
          @page{size:${SIZES[what.size]};margin:${what.size === "letter" ? "0.6in" : "0.3in"}}
          ${{ markup: STYLE }}
        </style>
      </head>
      <body class="${what.size === "letter" ? "letter" : "half"}">
        <main>${body}</main>
      </body>
    </html> `;
  return { name: fileName(what.name), title: what.title, page: markup };
}

/** What a file system takes everywhere. */
const fileName = (text: string): string =>
  text.replace(/[^\p{L}\p{N}._-]+/gu, "-").replace(/^[.-]+|[.-]+$/g, "");

/** A line of the facts at the top: what it is and what it says. */
export const fact = (name: string, says: string | Markup): Markup =>
  html`<div class="fact">
    <dt>${name}</dt>
    <dd>${says}</dd>
  </div>`;

export const facts = (lines: readonly Markup[]): Markup =>
  html`<dl class="facts">${lines}</dl>`;

export const heading = (title: string, number: string, farm: string): Markup =>
  html`<header>
    <div>
      <p class="farm">${farm}</p>
      <h1>${title}</h1>
    </div>
    <p class="number">${number}</p>
  </header>`;

/** A line to be filled in by hand. */
export const byHand = (name: string): Markup =>
  html`<div class="hand"><span>${name}</span></div>`;

export const handLines = (names: readonly string[]): Markup =>
  html`<section class="hands">${names.map(byHand)}</section>`;

/** Black on white in every theme: paper is what it is for, and bars must keep their contrast. */
const STYLE = `
*{box-sizing:border-box}
body{margin:0;background:#fff;color:#111;font:14px/1.4 "Segoe UI",Calibri,Carlito,"Helvetica Neue",Arial,sans-serif}
main{max-width:7.3in;margin:0 auto;padding:16px}
body.half main{max-width:7.9in;padding:12px}
header{display:flex;justify-content:space-between;align-items:flex-end;gap:16px;border-bottom:2px solid #111;padding-bottom:8px}
h1{margin:0;font:600 24px/1.15 Georgia,"Times New Roman",serif}
h2{margin:20px 0 6px;font:600 16px/1.3 Georgia,"Times New Roman",serif}
p{margin:0}
.farm{font-weight:600}
.number{font-size:22px;font-weight:600;white-space:nowrap}
.facts{display:grid;grid-template-columns:repeat(auto-fit,minmax(150px,1fr));gap:10px 20px;margin:14px 0}
.half .facts{margin:8px 0;gap:4px 16px;grid-template-columns:repeat(auto-fit,minmax(168px,1fr))}
dt{font-size:12px;color:#444}
dd{margin:0;font-weight:600;overflow-wrap:anywhere}
.wide{overflow-x:auto}
table{width:100%;border-collapse:collapse}
th,td{padding:5px 10px 5px 0;border-bottom:1px solid #999;text-align:left;font-weight:400;vertical-align:top}
thead th{font-size:12px;color:#444;border-bottom:1px solid #111}
td.figure,th.figure{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap;padding-right:0;padding-left:10px}
tr.sum th,tr.sum td{font-weight:600;border-top:2px solid #111;border-bottom:0}
.hands{display:grid;grid-template-columns:repeat(auto-fit,minmax(200px,1fr));gap:34px 28px;margin-top:44px}
.hand{border-top:1px solid #111;padding-top:3px;font-size:12px;color:#444}
.note{margin-top:16px;font-size:12px;color:#444}
.bars{margin:8px 0 0}
.bars svg{display:block;max-width:100%;height:24mm}
.bars figcaption{font-size:14px;letter-spacing:.03em;margin-top:2px;overflow-wrap:anywhere}
@media (max-width:420px){main,body.half main{padding:10px}h1{font-size:19px}.number{font-size:17px}th,td{font-size:12px}}
@media print{main,body.half main{max-width:none;padding:0}.wide{overflow:visible}tr{break-inside:avoid}}
`;
