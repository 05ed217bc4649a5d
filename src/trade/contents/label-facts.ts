import { answerOrNone } from "../../measures/cannot-answer";
import type { ColdLitres } from "../../measures/quantity";
import { LITRES_PER_GALLON } from "../../measures/units";
import {
  canadaClassWords,
  canadaLabelWords,
} from "../../standards/canada-label-words";
import type { ColorClass } from "../../standards/grades";
import type { SourceId } from "../../standards/sources";
import { allowedShort } from "./allowed-short";
import { canadaTypeHeight } from "./canada-type-height";
import { declaredVolume, type Statement } from "./declared-volume";
import { metricDeclaration, threeFiguresDown } from "./metric-declaration";

/** What is known of a product for its label; what the farm has not said is undefined and is never assumed. */
export interface LabelQuestion {
  readonly declared: ColdLitres;
  /** What the label says today: "12 fl oz (355 mL)". */
  readonly declaredText: string | undefined;
  readonly fill: ColdLitres;
  readonly colorClass: ColorClass | undefined;
  /** Principal display surface in cm². */
  readonly surface: number | undefined;
  readonly isProductOfCanada: boolean | undefined;
  readonly lotCode: string | undefined;
  readonly packer: string | undefined;
}

/** One thing a label says or follows, in both languages where it is words; or what is missing for it. */
export interface LabelFact {
  readonly what: string;
  readonly english: string | undefined;
  readonly french: string | undefined;
  readonly missing: string | undefined;
  readonly sources: readonly SourceId[];
}

/** What each fact needs said beside it. */
export const CHECK_THE_LAW =
  "Check it against the current text of the law; your authority decides.";

/** The facts of a Canadian label, with the US declaration beside the metric one. What no source was read for is missing. */
export function labelFacts(question: LabelQuestion): readonly LabelFact[] {
  const metric = metricOf(question);
  const { colorClass, surface, lotCode, packer } = question;
  return [
    said("Common name", canadaLabelWords.product, "canadaLabelWords"),
    said("Net quantity", inBoth(metric), "canadaNetQuantity"),
    said("With the US declaration", dual(question, metric), "usCustomary"),
    tested(question, metric),
    surface === undefined
      ? lacks(
          "Least height of the numerals",
          "the principal display surface in cm²",
          "canadaTypeHeight",
        )
      : said(
          "Least height of the numerals",
          decimals(`${canadaTypeHeight(surface)} mm`),
          "canadaTypeHeight",
        ),
    tolerance(metric.volume),
    fillFact(question, metric.volume),
    ...gradeFacts(colorClass),
    origin(question),
    lotCode === undefined
      ? lacks("Lot code", "the day it is packed", "canadaNetQuantity")
      : said("Lot code", [lotCode, lotCode], "canadaNetQuantity"),
    packer === undefined
      ? lacks("Packed by", "the farm's name in Settings", "arithmetic")
      : said("Packed by", [packer, packer], "arithmetic"),
    lacks("Address of the packer", "the address, which the book does not keep"),
    lacks(
      "Standard container sizes",
      "the table of sizes for maple, which was not read",
    ),
    lacks(
      "Best before, in the bilingual form",
      "the official symbols of the months, which were not read",
    ),
  ];
}

type Both = readonly [english: string, french: string];

const said = (
  what: string,
  [english, french]: Both,
  ...sources: readonly SourceId[]
): LabelFact => ({ what, english, french, missing: undefined, sources });

const lacks = (
  what: string,
  missing: string,
  ...sources: readonly SourceId[]
): LabelFact => ({
  what,
  english: undefined,
  french: undefined,
  missing,
  sources,
});

/** The same words with the decimal comma and the space of French. */
const decimals = (english: string): Both => [
  english,
  english.replace(/(\d)\.(\d)/g, "$1,$2").replace(/ /g, "\u00a0"),
];

interface Metric {
  readonly amount: number;
  readonly unit: "mL" | "L";
  readonly volume: ColdLitres;
}

/** What the label already says in metric, in the unit Canada wants; else the declared volume, rounded down. */
function metricOf({ declared, declaredText }: LabelQuestion): Metric {
  const own = statements(declaredText).find(({ text }) => isMetric(text));
  return metricDeclaration(own?.volume ?? declared);
}

const inBoth = ({ amount, unit }: Metric): Both =>
  decimals(`${amount} ${unit}`);

const isMetric = (text: string): boolean => /\b(ml|l|litres?)\b/i.test(text);

const statements = (text: string | undefined): readonly Statement[] =>
  text === undefined
    ? []
    : (answerOrNone(() => declaredVolume(text))?.statements ?? []);

/** Fluid ounces as the label says them, else from the declared volume, rounded down. */
function dual({ declared, declaredText }: LabelQuestion, metric: Metric): Both {
  const own = statements(declaredText).find(({ text }) => !isMetric(text));
  const ounces = threeFiguresDown(declared / (LITRES_PER_GALLON / 128));
  const us = own?.text.trim() ?? `${ounces} fl oz`;
  const [english, french] = inBoth(metric);
  return [`${us} (${english})`, `${us} (${french})`];
}

/** Of two declarations the larger is the one tested in the United States. */
function tested(question: LabelQuestion, metric: Metric): LabelFact {
  const customary = statements(question.declaredText).find(
    ({ text }) => !isMetric(text),
  );
  const volume = Math.max(metric.volume, customary?.volume ?? 0);
  return said(
    "Tested against, in the United States",
    decimals(`${Number((volume * 1000).toFixed(2))} mL`),
    "largerDeclaration",
  );
}

function tolerance(volume: ColdLitres): LabelFact {
  const what = "A single bottle may be short by";
  const found = answerOrNone(() => allowedShort(volume, "Canada"));
  return found
    ? said(
        what,
        decimals(`${Number((found.allowed * 1000).toFixed(3))} mL`),
        "canadaShortfall",
      )
    : lacks(
        what,
        "a volume that the Canadian table is for, up to 50 L",
        "canadaShortfall",
      );
}

function fillFact({ fill }: LabelQuestion, volume: ColdLitres): LabelFact {
  const over = Number(((fill - volume) * 1000).toFixed(2));
  return said(
    "Filled over what is declared, at 20 °C",
    decimals(`${over} mL`),
    "arithmetic",
  );
}

/** Syrup of no colour class, aged in oak for one, is not given a grade here. */
function gradeFacts(colorClass: ColorClass | undefined): readonly LabelFact[] {
  if (colorClass === undefined)
    return [
      lacks(
        "Grade and colour class",
        "a syrup kind that is a colour class: Golden, Amber, Dark or Very Dark",
        "gradeColors",
      ),
    ];
  return [
    said("Grade", canadaLabelWords.grade, "canadaLabelWords", "gradeSolids"),
    said(
      "Colour class",
      canadaClassWords[colorClass],
      "gradeColors",
      "canadaLabelWords",
    ),
  ];
}

function origin({ isProductOfCanada }: LabelQuestion): LabelFact {
  const what = "Origin";
  if (isProductOfCanada === undefined)
    return lacks(
      what,
      "whether the syrup may be called a product of Canada: the farm has to say so",
      "canadaLabelWords",
    );
  return isProductOfCanada
    ? said(what, canadaLabelWords.origin, "canadaLabelWords")
    : lacks(what, "the country the syrup is from, as it is not of Canada");
}
