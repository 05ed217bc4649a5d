import type { Definition } from "./define";
import { code } from "./page-markdown";

/** "=SYRUP.DENSITY(brix, [temperature], [unit])": arguments that may be left out stand in square brackets. */
export const callLine = ({ name, args }: Definition): string =>
  `=SYRUP.${name}(${Object.entries(args)
    .map(([argument, term]) =>
      "otherwise" in term ? `[${argument}]` : argument,
    )
    .join(", ")})`;

/** Link text for a function, from a page in the same folder. */
export const linkTo = (name: string, folder = ""): string =>
  `[${code(`SYRUP.${name}`)}](${folder}${name}.md)`;
