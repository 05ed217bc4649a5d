import type { Chart, ChartSeries } from "../../sheets/workbook";
import { chartMark } from "./chart-to-file";
import { partXml, relationsOf, type Parts } from "./package-parts";
import { textFromFile } from "./worksheet-text";
import { allNamed, childNamed, relationId, type XmlElement } from "./xml";

/** The charts on a worksheet that the model holds whole, each with the part it came from. Other charts are not among them. */
export function chartsFromFile(
  parts: Parts,
  worksheet: string,
): readonly { readonly part: string; readonly chart: Chart }[] {
  return drawingsOf(parts, worksheet).flatMap((drawing) => {
    const relations = relationsOf(parts, drawing);
    return allNamed(partXml(parts, drawing), "twoCellAnchor").flatMap(
      (anchor) => {
        const [shown] = allNamed(anchor, "cNvPr");
        const [frame] = allNamed(anchor, "chart");
        const part = relations.find(
          ({ id }) => frame && id === relationId(frame),
        )?.target;
        if (
          !part ||
          !parts[part] ||
          !shown?.attributes["name"]?.startsWith(chartMark)
        )
          return [];
        const chart = chartOf(
          partXml(parts, part),
          anchor,
          shown.attributes["descr"] ?? "",
        );
        return chart ? [{ part, chart }] : [];
      },
    );
  });
}

const drawingsOf = (parts: Parts, worksheet: string): readonly string[] =>
  relationsOf(parts, worksheet)
    .filter(({ kind, target }) => kind === "drawing" && parts[target])
    .map(({ target }) => target);

function chartOf(
  space: XmlElement,
  anchor: XmlElement,
  says: string,
): Chart | undefined {
  const kind = kindOf(space);
  const series = allNamed(space, "ser");
  const [first] = series;
  const [plot] = allNamed(space, "plotArea");
  if (!kind || !first || !plot) return undefined;
  const [values] = allNamed(plot, "valAx");
  const unit = titleOf(values);
  const format = childNamed(values, "numFmt")?.attributes["formatCode"];
  return {
    kind,
    title: titleOf(childNamed(space, "chart")) ?? "",
    says: textFromFile(says),
    categories: referenceIn(first, "cat"),
    series: series.map(seriesOf),
    ...(unit === undefined ? {} : { unit }),
    ...(format === undefined ? {} : { format }),
    area: areaOver(anchor),
  };
}

function kindOf(space: XmlElement): Chart["kind"] | undefined {
  if (allNamed(space, "lineChart").length > 0) return "lines";
  const [bars] = allNamed(space, "barChart");
  if (!bars) return undefined;
  if (childNamed(bars, "barDir")?.attributes["val"] !== "bar") return "columns";
  return childNamed(bars, "grouping")?.attributes["val"] === "stacked"
    ? "stacked bars"
    : "bars";
}

const seriesOf = (series: XmlElement): ChartSeries => {
  const tx = childNamed(series, "tx");
  const [fill] = allNamed(series, "srgbClr");
  return {
    name: textFromFile(childNamed(tx, "v")?.text ?? ""),
    values: referenceIn(series, "val"),
    color: `#${(fill?.attributes["val"] ?? "000000").toLowerCase()}`,
  };
};

const referenceIn = (series: XmlElement, what: "cat" | "val"): string => {
  const holder = childNamed(series, what);
  const [reference] = holder ? allNamed(holder, "f") : [];
  return textFromFile(reference?.text ?? "");
};

function titleOf(element: XmlElement | undefined): string | undefined {
  const title = childNamed(element, "title");
  if (!title) return undefined;
  return textFromFile(
    allNamed(title, "t")
      .map(({ text }) => text)
      .join(""),
  );
}

function areaOver(anchor: XmlElement): Chart["area"] {
  const corner = (which: "from" | "to", what: "row" | "col"): number =>
    Number(childNamed(childNamed(anchor, which), what)?.text ?? 0);
  const row = corner("from", "row");
  const column = corner("from", "col");
  return {
    row,
    column,
    rows: corner("to", "row") - row,
    columns: corner("to", "col") - column,
  };
}
