const ts = require("typescript");

/**
 * What a definition says to people: Excel's script only calculates, and every sheet that opens waits for it. The
 * metadata and the pages are made from the whole definitions.
 */
const WORDS = new Set([
  "family",
  "summary",
  "question",
  "gives",
  "basis",
  "uncertainty",
  "caution",
  "notes",
  "examples",
  "native",
  "nativeRefuses",
  "noNative",
  "why",
]);

/** A webpack loader: takes the words out of every `defineFunction({ … })`; what only they used is then dropped too. */
module.exports = function withoutWords(source) {
  const file = ts.createSourceFile(
    "definitions.ts",
    source,
    ts.ScriptTarget.Latest,
    true,
  );
  const cuts = [];
  const look = (node) => {
    const [given] = isDefinition(node) ? node.arguments : [];
    if (given && ts.isObjectLiteralExpression(given))
      for (const property of given.properties)
        if (property.name && WORDS.has(property.name.getText(file)))
          cuts.push([property.getFullStart(), endWithComma(source, property)]);
    ts.forEachChild(node, look);
  };
  look(file);
  return cuts.reduceRight(
    (text, [from, to]) => text.slice(0, from) + text.slice(to),
    source,
  );
};

const isDefinition = (node) =>
  ts.isCallExpression(node) && node.expression.getText() === "defineFunction";

function endWithComma(source, property) {
  const comma = /^\s*,/.exec(source.slice(property.end));
  return property.end + (comma ? comma[0].length : 0);
}
