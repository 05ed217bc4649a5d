import { unanswerable, unusable } from "../../measures/cannot-answer";
import { leftOf } from "../../measures/exact";
import { poundsText } from "../../measures/pounds-text";
import { as, type Kilograms } from "../../measures/quantity";

/**
 * Syrup in a tote. Refuses (#VALUE!) a tare that is not below the gross weight; a gross weight above the plate limit has
 * no answer (#N/A), because such a tote may not move.
 */
export function toteNet(
  gross: Kilograms,
  tare: Kilograms,
  plateLimit?: Kilograms,
): Kilograms {
  if (tare >= gross)
    throw unusable(
      `tare: ${poundsText(tare)} lb is not below the gross ${poundsText(gross)} lb; the two may be swapped`,
    );
  refuseAbovePlate(gross, plateLimit);
  return as<Kilograms>(leftOf(gross, [tare]));
}

/** A tote above what its plate allows has no answer (#N/A): it may not move. Without a limit there is nothing to hold it to. */
export function refuseAbovePlate(
  gross: Kilograms,
  plateLimit: Kilograms | undefined,
  name = "gross",
): void {
  if (plateLimit !== undefined && gross > plateLimit)
    throw unanswerable(
      `${name}: ${poundsText(gross)} lb is above the ${poundsText(plateLimit)} lb on the tote's plate; draw off ${poundsText(as<Kilograms>(gross - plateLimit))} lb and weigh again`,
    );
}
