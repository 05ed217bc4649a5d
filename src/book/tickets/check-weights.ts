import { as, type Brix, type Kilograms } from "../../measures/quantity";
import { KG_PER_LB } from "../../measures/units";
import { densityInAir } from "../../trade/syrup/density";
import { figure } from "../../functions/wording";
import { LITRES_PER_GALLON } from "../../measures/units";
import { asked, refused, type Reason } from "./reason";
import { pounds } from "./ticket-cells";
import type { TicketFacts } from "./ticket-facts";

export interface Weights {
  readonly gross: Kilograms | undefined;
  readonly tare: Kilograms | undefined;
  /** The net a paste gives beside them; it is worked out, not taken. */
  readonly net: Kilograms | undefined;
  readonly brix: Brix | undefined;
  /** The cells of gross and tare, for the offer to swap them. */
  readonly cells: { readonly gross: number; readonly tare: number };
  readonly texts: { readonly gross: string; readonly tare: string };
}

/** What gross, tare and net say of each other, of the tote's plate and of what it holds. */
export function weightReasons(
  { gross, tare, net, brix, cells, texts }: Weights,
  { plateLimit, toteVolume }: TicketFacts,
): readonly Reason[] {
  if (gross === undefined || tare === undefined) return [];
  if (tare >= gross)
    return [
      refused(
        `Tare ${pounds(tare)} lb is not below gross ${pounds(gross)} lb; the two look swapped`,
        tare > gross
          ? [
              {
                label: "Swap gross and tare",
                cells: { [cells.gross]: texts.tare, [cells.tare]: texts.gross },
              },
            ]
          : [],
      ),
    ];
  const weighed = as<Kilograms>(gross - tare);
  const full =
    brix === undefined
      ? undefined
      : as<Kilograms>(toteVolume * densityInAir(brix));
  return [
    ...(plateLimit !== undefined && gross > plateLimit
      ? [
          refused(
            `Gross ${pounds(gross)} lb is above the ${pounds(plateLimit)} lb on the tote's plate: do not lift or ship it; draw off and weigh again`,
          ),
        ]
      : []),
    ...(full !== undefined && weighed > full
      ? [
          asked(
            `Net ${pounds(weighed)} lb is more than a ${figure(toteVolume / LITRES_PER_GALLON, 4)} gal tote holds (${pounds(full)} lb); is it a larger tote, or is a weight wrong?`,
          ),
        ]
      : []),
    ...(net !== undefined && Math.abs(net - weighed) > 0.5 * KG_PER_LB
      ? [
          asked(
            `Net ${pounds(net)} lb stands beside gross less tare ${pounds(weighed)} lb; the latter is posted`,
          ),
        ]
      : []),
  ];
}
