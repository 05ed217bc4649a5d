import { FluentProvider, webLightTheme } from "@fluentui/react-components";
import { renderToStaticMarkup } from "react-dom/server";
import type { Costing } from "../../../../src/apps/pane/price/costing";
import { Headline } from "../../../../src/apps/pane/price/headline";

const place = { sheet: "Cost G250-AM", row: 0, column: 0 };
const shown = (basis: string | undefined): string => {
  const costing: Costing = {
    product: "G250-AM",
    sheet: "Cost G250-AM",
    figure: {
      full_replacement: { value: 4.5438, place },
      ...(basis === undefined ? {} : { full_basis: { value: basis, place } }),
    },
    parts: [],
    channels: [],
    checks: [],
  };
  return renderToStaticMarkup(
    <FluentProvider theme={webLightTheme}>
      <Headline costing={costing} perCase={undefined} />
    </FluentProvider>,
  );
};

test("a full cost whose overheads are estimated says from which season, and no other does", () => {
  expect(shown("estimate from season 2026")).toContain(
    "(estimate from season 2026)",
  );
  for (const basis of [undefined, "the season's own"])
    expect(shown(basis)).not.toMatch(/estimate|own\)/);
});
