const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const CssPlugin = require("mini-css-extract-plugin");
const { rasterize } = require("./manifest/icons/rasterize.cjs");
const { UnifiedPackage } = require("./manifest/unified-package.cjs");
const { GeneratedFiles } = require("./src/apps/cli/generated-files.cjs");

const at = (...parts) => path.join(__dirname, ...parts);

const typescript = {
  test: /\.tsx?$/,
  exclude: /node_modules/,
  // Nothing of ours is imported for what it does on arrival, so what is imported and not used can stay out.
  sideEffects: false,
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

const icon = (svg, pixels, to) => ({
  from: `manifest/icons/${svg}.svg`,
  to,
  transform: (drawing) => rasterize(drawing, pixels),
});

/** Not for the files made while building: the metadata and the front page are made of the words. */
const withoutWords = {
  test: /src[\\/]functions[\\/][^\\/]+\.ts$/,
  compiler: (name) => name !== "GeneratedFiles",
  enforce: "pre",
  use: at("src/apps/cli/without-words.cjs"),
};

/** What Excel loads for the functions, and what it is told. File names are fixed: the manifest names them. */
const functions = ({ base }) => ({
  ...everywhere("functions"),
  target: ["web", "es2022"],
  entry: { functions: "./src/apps/functions/main.ts" },
  output: { path: at("dist/addin"), filename: "[name].js", clean: true },
  module: { rules: [typescript, withoutWords] },
  plugins: [
    new GeneratedFiles("./src/apps/functions/addin-files.ts", { base }),
    new CopyPlugin({
      patterns: [
        ...[16, 32, 64, 80, 128].map((pixels) =>
          icon("icon", pixels, `assets/icon-${pixels}.png`),
        ),
        icon("icon", 192, "unified/color.png"),
        icon("outline", 32, "unified/outline.png"),
      ],
    }),
    new UnifiedPackage({ folder: "unified", zip: "unified.zip" }),
  ],
});

/** The page Excel shows: its first script is small, the pane comes when it is seen. */
const taskpane = {
  ...everywhere("taskpane"),
  target: ["web", "es2022"],
  entry: { taskpane: "./src/apps/taskpane/main.ts" },
  output: {
    path: at("dist/taskpane"),
    filename: "[name].js",
    chunkFilename: "pane/[name].[contenthash:8].js",
    publicPath: "",
    clean: true,
  },
  module: { rules: [typescript] },
  plugins: [
    new CopyPlugin({
      patterns: [
        // Kept as it was written: what it says about Excel's library is meant to be read.
        { from: "src/apps/taskpane/taskpane.html", info: { minimized: true } },
      ],
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

/** `--env base=https://…` says where the add-in's files will be served. */
module.exports = (env = {}) => [functions(env), taskpane, workbench, cli];
