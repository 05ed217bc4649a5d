import { unanswerable } from "../measures/cannot-answer";
import { poundsText } from "../measures/pounds-text";
import type { LimitName } from "../trade/blending/blend-limits";
import type { Asked, Blocking } from "../trade/blending/blocking-limit";
import type {
  BlendLot,
  BlendPlan,
  WantedBlend,
} from "../trade/blending/least-cost";
import { entered } from "./wording";

/** Why there is no blend, which limit stands in the way, and what could be asked instead. */
export function noBlend(
  plan: Exclude<BlendPlan, { readonly kind: "plan" }>,
  lots: readonly BlendLot[],
  wanted: WantedBlend,
) {
  const { organicOnly, weight } = wanted;
  const organic = organicOnly ? "organic " : "";
  if (plan.kind === "short")
    return unanswerable(
      `only ${poundsText(plan.there)} lb of ${organic}syrup in these lots; ${poundsText(weight)} asked${unknownOrganic(lots, wanted)}`,
    );
  const the = `the ${organic}lots`;
  const [first] = plan.by;
  if (!first) return unanswerable(`no mix of ${the} keeps all limits`);
  const said = first.beside
    ? together(plan.by, first.beside.limit, the)
    : plan.by.map((by) => alone(by, the, poundsText(weight))).join("; and ");
  return unanswerable(`${said}${unknownOrganic(lots, wanted)}`);
}

/** "; 2 lots with a blank organic cell count as not organic", where that leaves lots out. */
export function unknownOrganic(
  lots: readonly BlendLot[],
  { organicOnly }: WantedBlend,
): string {
  const unknown = lots.filter(({ organic }) => organic === undefined).length;
  if (!organicOnly || unknown === 0) return "";
  return unknown === 1
    ? "; 1 lot with a blank organic cell counts as not organic"
    : `; ${unknown} lots with a blank organic cell count as not organic`;
}

const alone = (by: Blocking, the: string, weight: string): string =>
  `${by.limit} blocks: for ${weight} lb ${the} ${reach(by)}; ${remedy(by)}`;

function together(
  by: readonly Blocking[],
  beside: LimitName,
  the: string,
): string {
  const limits = new Set([...by.map(({ limit }) => limit), beside]);
  const each = by.map(
    (blocking) =>
      `at ${askedOf(blocking.beside ?? blocking)} ${the} ${reach(blocking)}`,
  );
  return `${[...limits].join(" and ")} block each other: ${each.join("; ")}; ease one of them`;
}

/** "reach at most 66.2 °Bx, 66.9 asked" */
const reach = (by: Blocking): string =>
  by.limit === "brix max"
    ? `come down to ${reachedOf(by)} at the least, ${entered(by.asked)} asked`
    : `reach at most ${reachedOf(by)}, ${entered(by.asked)} asked`;

const remedy = (by: Blocking): string =>
  by.limit === "brix max"
    ? `type ${rounded(by)} or more, or add a thinner lot`
    : `type ${rounded(by)} or less, or add a ${by.limit === "brix min" ? "heavier" : "lighter"} lot`;

const unitOf = (limit: LimitName): string =>
  limit === "transmittance min" ? "% transmission" : "°Bx";

const reachedOf = (by: Blocking): string =>
  `${rounded(by)} ${unitOf(by.limit)}`;

const askedOf = ({ limit, asked }: Asked): string =>
  `${entered(asked)} ${unitOf(limit)} or ${limit === "brix max" ? "less" : "more"}`;

/** To a hundredth, and to the side that can be reached, so that it can be typed. */
function rounded({ limit, asked, reached }: Blocking): string {
  const places = Math.abs(asked - reached) < 0.02 ? 1e6 : 100;
  const round = limit === "brix max" ? Math.ceil : Math.floor;
  const noise = limit === "brix max" ? -1e-6 : 1e-6;
  return entered(round(reached * places + noise) / places);
}
