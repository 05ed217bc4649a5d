const { readFileSync } = require("node:fs");

let ready;

/** Draws an SVG as a square PNG of so many pixels. The drawing program is WebAssembly: the same bytes on every machine. */
async function rasterize(svg, pixels) {
  const { initWasm, Resvg } = require("@resvg/resvg-wasm");
  ready ??= initWasm(
    readFileSync(require.resolve("@resvg/resvg-wasm/index_bg.wasm")),
  );
  await ready;
  const drawing = new Resvg(svg, { fitTo: { mode: "width", value: pixels } });
  return Buffer.from(drawing.render().asPng());
}

module.exports = { rasterize };
