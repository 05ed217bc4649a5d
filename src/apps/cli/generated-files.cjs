const Module = require("node:module");
const webpack = require("webpack");

const NAME = "GeneratedFiles";

/**
 * Bundles a module of ours while webpack builds, runs it, and emits the files it gives: its export `files` is a
 * function from the settings given to a record of file name and text.
 */
class GeneratedFiles {
  constructor(entry, settings = {}) {
    this.entry = entry;
    this.settings = settings;
  }

  apply(compiler) {
    compiler.hooks.make.tapPromise(NAME, async (compilation) => {
      const files = await this.run(compiler, compilation);
      compilation.hooks.processAssets.tap(NAME, () => {
        for (const [name, text] of Object.entries(files)) {
          compilation.emitAsset(name, new webpack.sources.RawSource(text));
        }
      });
    });
  }

  async run(compiler, compilation) {
    const bundle = `${NAME}.cjs`;
    const child = compilation.createChildCompiler(
      NAME,
      { filename: bundle, library: { type: "commonjs2" } },
      [
        new webpack.node.NodeTargetPlugin(),
        new webpack.library.EnableLibraryPlugin("commonjs2"),
        new webpack.EntryPlugin(compiler.context, this.entry, { name: NAME }),
      ],
    );
    const text = await new Promise((resolve, reject) => {
      child.runAsChild((problem, _entries, built) => {
        const failed = problem ?? built.errors[0];
        if (failed) return reject(failed);
        const source = built.assets[bundle].source().toString();
        compilation.deleteAsset(bundle);
        resolve(source);
      });
    });
    const generated = new Module(this.entry);
    generated._compile(text, this.entry);
    return generated.exports.files(this.settings);
  }
}

module.exports = { GeneratedFiles };
