import type { Definition } from "../../../functions/define";
import type { Host } from "../../../hosts/host";
import type { Write } from "../last-write";
import { sentence } from "../sentence";
import { dateTermFor, shown } from "../why/shown";
import type { Landing } from "./landing";
import type { Preview } from "./preview";
import { inWords } from "./reference";
import type { Shown } from "./use-preview";

/** Why the call cannot be written as it stands, and the argument to look at; undefined when it can. */
export function whyNot(
  { args }: Definition,
  { preview, landing }: Shown,
): { readonly says: string; readonly argument?: string } | undefined {
  if (!preview) return { says: "The form cannot be read just now." };
  const [trouble] = Object.entries(preview.troubles);
  if (trouble) return { says: sentence(trouble[1]), argument: trouble[0] };
  const [missing] = preview.missing;
  if (missing !== undefined)
    return {
      says: `Still needed: ${preview.missing.map((name) => args[name]?.label ?? name).join(", ")}.`,
      argument: missing,
    };
  // A refusal of cells may pass when the cells are filled; one of typed figures never does.
  const { refusal } = preview.call ?? {};
  if (refusal !== undefined && preview.reads.length === 0)
    return { says: sentence(refusal) };
  const obstacle = typeof landing === "object" ? landing.obstacle : landing;
  return obstacle === undefined ? undefined : { says: obstacle };
}

/** Writes the formula and says what the cell then shows, with the way to take it back. */
export async function put(
  host: Host,
  definition: Definition,
  preview: Preview,
  { place }: Landing,
): Promise<Write> {
  const { name, gives } = definition;
  const isDate = gives.unit === "date";
  const takeBack = await host.putFormula(place, {
    formula: preview.formula,
    ...(isDate ? { format: "yyyy-mm-dd" } : {}),
  });
  const { value, refusal } = await host.readCell(place);
  const where = inWords({ ...place, rows: 1, columns: 1 });
  const found =
    refusal === undefined
      ? shown(value, isDate ? dateTermFor("date") : undefined)
      : sentence(refusal);
  return {
    says: `SYRUP.${name} is now in ${where}: ${found}`,
    takeBack: async () => {
      await takeBack();
      return `${where} is as it was.`;
    },
  };
}
