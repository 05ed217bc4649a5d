const { zipSync } = require("fflate");
const { Compilation, sources } = require("webpack");

const NAME = "UnifiedPackage";
/** The earliest day a zip can name: the same files give the same bytes. */
const ANY_DAY = new Date(1980, 0, 1);

/** Zips the unified manifest and its two icons, the form in which that manifest is installed. */
class UnifiedPackage {
  /** @param {{ folder: string, zip: string }} places where the three files stand and what the zip is called */
  constructor({ folder, zip }) {
    this.folder = folder;
    this.zip = zip;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap(NAME, (compilation) =>
      compilation.hooks.processAssets.tap(
        // After the icons were drawn, which other plugins add late.
        { name: NAME, stage: Compilation.PROCESS_ASSETS_STAGE_REPORT },
        (assets) => {
          const inside = ["manifest.json", "color.png", "outline.png"].map(
            (file) => {
              const asset = assets[`${this.folder}/${file}`];
              if (!asset)
                throw new Error(`${this.folder}/${file} was not made`);
              const bytes = Uint8Array.from(Buffer.from(asset.source()));
              return [file, [bytes, { mtime: ANY_DAY }]];
            },
          );
          compilation.emitAsset(
            this.zip,
            new sources.RawSource(
              Buffer.from(zipSync(Object.fromEntries(inside))),
            ),
          );
        },
      ),
    );
  }
}

module.exports = { UnifiedPackage };
