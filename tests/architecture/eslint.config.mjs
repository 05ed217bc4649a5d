import { fileURLToPath } from "node:url";
import js from "@eslint/js";
import officeAddins from "eslint-plugin-office-addins";
import typescript from "typescript-eslint";

const node = {
  Buffer: "readonly",
  URL: "readonly",
  console: "readonly",
  process: "readonly",
  setTimeout: "readonly",
};
const commonjs = {
  ...node,
  __dirname: "readonly",
  __filename: "readonly",
  module: "writable",
  require: "readonly",
};

const banned = {
  enumeration: {
    selector: "TSEnumDeclaration",
    message: "Use a union of texts: enums exist at run time and widen badly.",
  },
  defaultExport: {
    selector: "ExportDefaultDeclaration",
    message: "Export by name, so that a thing is called the same everywhere.",
  },
  barrel: {
    selector: "ExportAllDeclaration",
    message: "Import from the file that holds the thing; no barrels.",
  },
};

const emptyLoad = {
  selector: "CallExpression[callee.property.name='load'][arguments.length=0]",
  message: "Name what is to be loaded: all properties at once are slow.",
};

const officeRules = (level, names = Object.keys(officeAddins.rules)) =>
  Object.fromEntries(names.map((name) => [`office-addins/${name}`, level]));

export default typescript.config(
  {
    ignores: ["dist/", "coverage/", "tests/output/", "node_modules/"],
  },
  js.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    extends: [typescript.configs.recommended],
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: fileURLToPath(new URL("../..", import.meta.url)),
      },
    },
    rules: {
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/no-unnecessary-type-assertion": "error",
      "@typescript-eslint/no-unused-vars": [
        "error",
        { argsIgnorePattern: "^_", varsIgnorePattern: "^_" },
      ],
      "@typescript-eslint/switch-exhaustiveness-check": [
        "error",
        { considerDefaultExhaustiveForUnions: true },
      ],
      eqeqeq: "error",
      "no-console": "error",
      "no-restricted-syntax": ["error", ...Object.values(banned)],
    },
  },
  {
    // Microsoft's rules about Excel's library; what it only warns of is an error here.
    files: ["src/hosts/excel/**", "src/apps/taskpane/**"],
    plugins: { "office-addins": officeAddins },
    rules: {
      ...officeRules("error"),
      "no-restricted-syntax": ["error", ...Object.values(banned), emptyLoad],
    },
  },
  {
    // These look at one function at a time and at plain texts only. The host asks in one function and takes in
    // another, so that readings travel together; the real library, run by the contract suite, refuses every value
    // that was not loaded.
    files: ["src/hosts/excel/**"],
    rules: officeRules("off", [
      "call-sync-after-load",
      "call-sync-before-read",
      "load-object-before-read",
      "no-empty-load",
    ]),
  },
  {
    // Long work goes in pieces that fit one request, and a write waits until Excel has calculated.
    files: ["src/hosts/excel/{step,settling}.ts"],
    rules: officeRules("off", ["no-context-sync-in-loop"]),
  },
  {
    files: ["**/*.cjs", "webpack.config.js"],
    languageOptions: { sourceType: "commonjs", globals: commonjs },
  },
  {
    files: ["**/*.mjs"],
    languageOptions: { globals: node },
  },
);
