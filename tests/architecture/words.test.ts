import { projectFiles, textOf } from "./project-files";

// Put together here so that this file does not hold them itself.
const together = (...parts: readonly string[]): RegExp =>
  new RegExp(parts.join(""), "i");

const ourMaking = [
  together("seed", "[ -]?doc"),
  together("tran", "script"),
  together("tool", " library"),
  together("sub", "-?agent"),
  together("language", " model"),
  together("as an ", "AI\\b"),
];
// A machine's own folders, and hosts that serve packages.
const machines = [
  together("(^|[\\s\"'`(=:])/(wo", "rk|ro", "ot|tm", "p|ho", "me|Us", "ers)/"),
  together("registry\\.npm", "js"),
  together("npm", "mirror"),
  together("arti", "factory"),
];

const files = projectFiles().filter(
  (file) => !/\.(png|xlsx|ico|woff2?)$/.test(file) && !file.startsWith(".git/"),
);

test.each([
  ["says how it was made", ourMaking],
  ["names a machine's own folder or a package host", machines],
])("nothing in the project %s", (_, words) => {
  const found = files.flatMap((file) =>
    textOf(file)
      .split("\n")
      .map((line, i) => ({ line, at: `${file}:${i + 1}` }))
      .filter(({ line }) => words.some((word) => word.test(line)))
      .map(({ line, at }) => `${at} ${line.trim().slice(0, 120)}`),
  );
  expect(files.length).toBeGreaterThan(50);
  expect(found).toEqual([]);
});
