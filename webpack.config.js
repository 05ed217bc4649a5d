const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const CssPlugin = require("mini-css-extract-plugin");
const { GeneratedFiles } = require("./src/apps/cli/generated-files.cjs");

const at = (...parts) => path.join(__dirname, ...parts);

const typescript = {
  test: /\.tsx?$/,
  exclude: /node_modules/,
  use: {
    loader: "swc-loader",
    options: {
      jsc: {
        parser: { syntax: "typescript", tsx: true },
        transform: { react: { runtime: "automatic" } },
        target: "es2022",
      },
    },
  },
};

const everywhere = (name) => ({
  name,
  context: __dirname,
  mode: "production",
  devtool: false,
  resolve: { extensions: [".ts", ".tsx", ".mjs", ".js", ".json"] },
  performance: false,
  stats: "errors-warnings",
  cache: {
    type: "filesystem",
    name,
    cacheDirectory: at("node_modules/.cache/webpack"),
    buildDependencies: { config: [__filename] },
  },
});

/** What Excel loads. File names are fixed: the manifest names them. */
const functions = {
  ...everywhere("functions"),
  target: ["web", "es2022"],
  entry: { functions: "./src/apps/functions/main.ts" },
  output: { path: at("dist/addin"), filename: "[name].js", clean: true },
  module: { rules: [typescript] },
  plugins: [
    new GeneratedFiles("./src/apps/functions/addin-files.ts"),
    new CopyPlugin({
      patterns: [{ from: "manifest/icons/*.png", to: "assets/[name][ext]" }],
    }),
  ],
};

const workbench = {
  ...everywhere("workbench"),
  target: ["web", "es2022"],
  entry: { workbench: "./src/apps/workbench/main.tsx" },
  output: {
    path: at("dist/workbench"),
    filename: "[name].[contenthash:8].js",
    chunkFilename: "[name].[contenthash:8].js",
    assetModuleFilename: "assets/[name].[contenthash:8][ext]",
    publicPath: "",
    clean: true,
  },
  module: {
    rules: [
      typescript,
      { test: /\.css$/, use: [CssPlugin.loader, "css-loader"] },
      { test: /\.(svg|png|woff2?)$/, type: "asset/resource" },
      { test: /\.csv$/, type: "asset/source" },
    ],
  },
  optimization: { splitChunks: { chunks: "all" } },
  plugins: [
    new HtmlPlugin({ template: "./src/apps/workbench/index.html" }),
    // The grid's own style sheets come in an order of their own that does not matter to ours.
    new CssPlugin({
      filename: "[name].[contenthash:8].css",
      ignoreOrder: true,
    }),
  ],
};

const cli = {
  ...everywhere("cli"),
  target: "node20",
  entry: { main: "./src/apps/cli/main.ts" },
  output: {
    path: at("dist/cli"),
    filename: "[name].cjs",
    chunkFilename: "[name].cjs",
    clean: true,
  },
  module: {
    // What the command line loads from the project's folder by createRequire is not to be bundled.
    parser: { javascript: { createRequire: false } },
    rules: [
      typescript,
      { test: /\.css$/, type: "asset/resource", generator: { emit: false } },
      { test: /\.csv$/, type: "asset/source" },
    ],
  },
  optimization: { minimize: false },
};

module.exports = [functions, workbench, cli];
