import { existsSync } from "node:fs";
import path from "node:path";
import { generatedDocs } from "../../src/apps/cli/generated-docs";
import { projectFiles, root, textOf } from "./project-files";

const pages = projectFiles().filter((file) => file.endsWith(".md"));

test("every link in the docs leads somewhere, down to the heading", () => {
  const broken = pages.flatMap((page) =>
    linksOf(textOf(page))
      .filter((link) => !/^[a-z]+:/i.test(link))
      .filter((link) => !leadsSomewhere(page, link))
      .map((link) => `${page}: ${link}`),
  );
  expect(pages.length).toBeGreaterThan(0);
  expect(broken).toEqual([]);
});

test("the generated pages are what `npm run docs` makes of the definitions now", () => {
  const { files, obsolete } = generatedDocs(root);
  const stale = [...files]
    .filter(([file, text]) => {
      const full = path.join(root, "docs", file);
      return (
        !existsSync(full) || textOf(path.posix.join("docs", file)) !== text
      );
    })
    .map(([file]) => file);
  expect(files.size).toBeGreaterThan(1);
  expect({ stale, obsolete }).toEqual({ stale: [], obsolete: [] });
});

function linksOf(markdown: string): readonly string[] {
  const prose = markdown
    .replace(/^```[\s\S]*?^```/gm, "")
    .replace(/`[^`\n]*`/g, "");
  return [...prose.matchAll(/\]\(<?([^)\s>]+)>?(?:\s+"[^"]*")?\)/g)].map(
    ([, link = ""]) => link,
  );
}

function leadsSomewhere(page: string, link: string): boolean {
  const [file = "", heading] = decodeURIComponent(link).split("#");
  const target = file ? path.posix.join(path.posix.dirname(page), file) : page;
  if (!existsSync(path.join(root, target))) return false;
  return (
    heading === undefined ||
    !target.endsWith(".md") ||
    anchorsOf(textOf(target)).includes(heading)
  );
}

/** Headings as the usual Markdown viewers turn them into anchors, and anchors written out. */
function anchorsOf(markdown: string): readonly string[] {
  const counts = new Map<string, number>();
  const headings = [...markdown.matchAll(/^#{1,6}\s+(.+?)\s*#*$/gm)].map(
    ([, heading = ""]) => {
      const anchor = heading
        .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
        .toLowerCase()
        .replace(/[^\p{L}\p{N}\p{M}_\- ]/gu, "")
        .replace(/ /g, "-");
      const before = counts.get(anchor) ?? 0;
      counts.set(anchor, before + 1);
      return before === 0 ? anchor : `${anchor}-${before}`;
    },
  );
  const written = [...markdown.matchAll(/<a (?:id|name)="([^"]+)"/g)].map(
    ([, anchor = ""]) => anchor,
  );
  return [...headings, ...written];
}
