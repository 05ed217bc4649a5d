import {
  audienceNames,
  audiences,
  noTicks,
  shows,
} from "../../../src/sheets/handover/audiences";
import { topicOf } from "../../../src/sheets/handover/topics";

// The four lists and what is never in them are the farm's own rule: partner cost blocks and margin, customer price,
// quantities and terms, lender values, stock and margin, broker the price list; never growers, lot prices, wages or
// other customers.
test.each(audienceNames)(
  "%s is never shown wages, single lots or other customers",
  (name) => {
    for (const topic of [
      "wages",
      "lots",
      "lot prices",
      "other customers",
    ] as const)
      expect(audiences[name].sees).not.toContain(topic);
  },
);

test.each(["lender", "customer", "broker"] as const)(
  "%s sees no part of a cost, in whatever column it stands",
  (name) => {
    for (const part of ["syrup", "materials", "labour", "heat", "overhead"])
      for (const column of ["replacement", "average", "oldest"])
        expect(
          shows(name, noTicks, topicOf("costing", `cost.${part}.${column}`)),
        ).toBe(false);
  },
);

test("a figure on no list is shown to nobody, however much is ticked", () => {
  const everything = { ...noTicks, show: [...audiences.partner.sees] };
  for (const name of audienceNames)
    expect(shows(name, everything, topicOf("costing", "a_new_figure"))).toBe(
      false,
    );
});

test("what is hidden is hidden even where it is ticked to be shown", () => {
  expect(
    shows(
      "partner",
      { ...noTicks, hide: ["margin"], show: ["margin"] },
      "margin",
    ),
  ).toBe(false);
});
