import { listed } from "../../book/finding";
import type { TruckAnswer } from "./truck-answer";

/** The truck plan as a person reads it at a terminal. */
export const truckText = (answer: TruckAnswer): readonly string[] => {
  const { fits, load } = answer;
  return [
    `${fits.totes} ${totes(fits.totes)} of ${lb(answer.grossLb)} gross fit (${answer.grossOf}); ${fits.binds.join(" and ")} ${fits.binds.length === 1 ? "stops" : "stop"} the next`,
    `  by weight ${fits.byWeight}, of ${lb(answer.limitLb)}`,
    ...(fits.byAxles === null || answer.axleLimitLb === null
      ? []
      : [`  by axles ${fits.byAxles}, of ${lb(answer.axleLimitLb)}`]),
    ...(fits.byFloor === null ? [] : [`  by floor ${fits.byFloor}`]),
    ...(load === null
      ? []
      : [
          "",
          `The ${load.totes} chosen ${load.totes === 1 ? "tote weighs" : "totes weigh"} ${lb(load.grossLb)} gross: ${
            load.leftLb < 0
              ? `${lb(-load.leftLb)} too much`
              : `${lb(load.leftLb)} left`
          }${load.spotsLeft === null ? "" : load.spotsLeft < 0 ? `, ${-load.spotsLeft} without a place` : `, ${load.spotsLeft} ${load.spotsLeft === 1 ? "place" : "places"} free`}`,
          ...(load.over.length === 0
            ? []
            : [
                `  over ${load.over.join(" and ")}: in this order ${load.riding.length === 0 ? "none ride" : `${listed(load.riding, 30)} ride`}`,
              ]),
          ...(load.plateLimitUnknown.length === 0
            ? []
            : [
                `  plate limit not entered, so look at the plate: ${listed(load.plateLimitUnknown, 30)}`,
              ]),
        ]),
    "",
    answer.caution,
  ];
};

const totes = (count: number): string => (count === 1 ? "tote" : "totes");
const lb = (pounds: number): string =>
  `${pounds.toLocaleString("en-US", { maximumFractionDigits: 1 })} lb`;
