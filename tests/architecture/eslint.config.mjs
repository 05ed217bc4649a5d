import { fileURLToPath } from "node:url";
import js from "@eslint/js";
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
    files: ["**/*.cjs", "webpack.config.js"],
    languageOptions: { sourceType: "commonjs", globals: commonjs },
  },
  {
    files: ["**/*.mjs"],
    languageOptions: { globals: node },
  },
);
