/** Every source of a number or rule in this project, listed once. `kind` says how far it can be trusted. */
export interface Source {
  readonly title: string;
  readonly detail: string;
  readonly kind:
    "published" | "definition" | "common practice" | "memory" | "our own rule";
}

export const sources = {
  icumsaDensity: {
    title: "Density of sucrose solutions, ICUMSA / Emmerich type polynomial",
    detail:
      "Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual (Bartens, 1995), p. 164, stated for 0-100 °C; coefficients as read in two unrelated public source files.",
    kind: "published",
  },
  bettinSpieweck: {
    title: "Density of water, 0-100 °C",
    detail: "Bettin & Spieweck form, as read with the sucrose polynomial.",
    kind: "published",
  },
  airBuoyancy: {
    title: "Weighing in air",
    detail:
      "Weights of 8.0-8.4 g/cm³ in air of 1.2 kg/m³, the convention of customary pounds-per-gallon tables; value of the weights from memory.",
    kind: "memory",
  },
  usCustomary: {
    title: "US customary units",
    detail:
      "1 lb = 0.45359237 kg and 1 US gal = 3.785411784 L, exact by definition.",
    kind: "definition",
  },
  vermontChart: {
    title: "Maple hydrometer chart, calibrated at 60 °F",
    detail:
      "Vermont-calibrated chart for syrup of 36 °Bé (modulus 145) at 60 °F, 50-209 °F in steps of 0.25 °Bé; a trade copy of the state chart, the regulation itself was not read.",
    kind: "published",
  },
  baumeScale: {
    title: "Baumé scale, modulus 145",
    detail:
      "°Bé = 145 − 145 / specific gravity 20/20, the modulus of AOAC 932.14 and of the Vermont density rule (36 °Bé = 66.9 °Bx), as quoted; on true specific gravity 20/20 it gives the maple pairs within 0.033 °Bé.",
    kind: "published",
  },
  hydrometerGlass: {
    title: "Expansion of hydrometer glass",
    detail:
      "25e-6 per K cubical, from memory; it was taken before the comparison with the maple chart, not fitted to it.",
    kind: "memory",
  },
  refractionFit: {
    title: "Brix from the refractive index, sodium D line, 20 °C",
    detail:
      "Fifth-degree fit to the ICUMSA table as printed in a public encyclopedia, article on degrees Brix, read through a mirror; the rounded coefficients alone allow ±0.03 °Bx.",
    kind: "published",
  },
  refractometerTable: {
    title: "Refractometer correction for temperature",
    detail:
      "OIV Compendium, method OIV-MA-AS2-02, Table I, 10-17 °C; our own least-squares fit to 110 of its cells (largest difference 0.006 °Bx), extended to 30 °C.",
    kind: "published",
  },
  genotelle: {
    title: "Viscosity of sucrose solutions",
    detail:
      "Genotelle form, Mathlouthi & Genotelle in Sucrose: Properties and Applications (Blackie, 1995), pp. 126-154; coefficients as read in two public source files.",
    kind: "published",
  },
  starzakPeacock: {
    title: "Water activity of sucrose solutions",
    detail:
      "Starzak & Peacock 1997, from 1197 points; constants read on a sugar-technology site, the form in a slide text by Starzak & Mathlouthi.",
    kind: "published",
  },
  steamPressure: {
    title: "Vapour pressure of water",
    detail:
      "Wagner & Pruss form (IAPWS), coefficients from memory; water boils within 0.0002 °C of the IAPWS industrial formulation of 1997 as a library of steam properties gives it, 20-32 inHg.",
    kind: "memory",
  },
  gradeColors: {
    title: "Colour classes of maple syrup",
    detail:
      "Canadian Grade Compendium vol. 7, Maple Products Regulations (C.R.C., c. 289) Schedule III and Quebec P-29 r.1 Schedule 8.B: transmission at 560 nm, 10 mm, glycerol = 100; the US standards of 2 March 2015 use the same limits.",
    kind: "published",
  },
  gradeSolids: {
    title: "Solids of graded maple syrup",
    detail:
      "66-68.9 % soluble solids at 20 °C: Canadian Grade Compendium vol. 7, sections 3-4; US standards 52.5961-52.5962 of 2 March 2015.",
    kind: "published",
  },
  heatCapacityForm: {
    title: "Heat capacity of sucrose solutions",
    detail:
      "Sugar-handbook form 4.1868 − B(0.0297 − 4.6e-5·purity) + 7.5e-5·B·T in kJ/kg·K, from memory; an equal form (within 0.004) was read in a public source file citing Llano 2005. The tables behind it were not seen, hence ±3 %.",
    kind: "memory",
  },
  fuelHeat: {
    title: "Heat in fuels as they are sold",
    detail:
      "Propane 91,500 BTU/gal, natural gas 100,000 BTU/therm, fuel oil 138,500 BTU/gal, electricity 3,412.14 BTU/kWh: common practice, no source.",
    kind: "common practice",
  },
  hb133Rules: {
    title: "NIST Handbook 133: average and individual test",
    detail:
      "2026 edition, section 2.3.7, read: a minus average passes when it is smaller than the sample error limit, the spread times the sample factor; the lot fails when more packages than allowed are short by more than the maximum allowable variation (MAV).",
    kind: "published",
  },
  hb133Plan: {
    title: "NIST Handbook 133, Table 2-1, Category A",
    detail:
      "Lots, sample sizes, sample factors and packages allowed, from memory; the factors agree with Student's t at 97.5 % over the root of n, but for 48 (0.291 against 0.290), and the last digit at 2, 5 and 6 is the computed one.",
    kind: "memory",
  },
  euPrepackages: {
    title: "Directive 76/211/EEC on prepackages",
    detail:
      "Annex I: scope 5 mL to 10 L, three rules, tolerable negative error to 1,000 mL; Annex II: double plan and check of the mean (factors 0.640, 0.503, 0.379), as read in the directive and in UK SI 2006/659.",
    kind: "published",
  },
  euLargerPacks: {
    title: "Directive 76/211/EEC above 1,000 mL, and rounding up",
    detail:
      "1.5 % above 1,000 mL, and percentages rounded up to the next 0.1 mL: from memory; the 1.5 % equals the Canadian row that was read.",
    kind: "memory",
  },
  ukSmallLots: {
    title: "Lots below 100 under UK SI 2006/659",
    detail:
      "Schedule 2: every package is checked, at most 5 % may be short, and the mean must reach the declared volume with no allowance.",
    kind: "published",
  },
  oimlR87: {
    title: "OIML R 87, quantity of product in prepackages",
    detail:
      "Tolerable deficiency to 50 L, rounding, and the plans of 50, 80 and 125, from memory; the factors agree with Student's t at 99.5 % over the root of n. The plans for lots below 100 were not recalled.",
    kind: "memory",
  },
  canadaShortfall: {
    title: "Canadian limits of error by volume",
    detail:
      "Weights and Measures Regulations, C.R.C., c. 1605, Schedule II Part III, read; it is headed individually measured commodities, and the schedule for prepackaged food was not read.",
    kind: "published",
  },
  canadaNetQuantity: {
    title: "Net quantity on a Canadian label",
    detail:
      "Safe Food for Canadians Regulations, sections 221, 232 and 244.1(g), read in part: metric, on the principal display panel, with a lot code on the label; millilitres below 1 L as in the older Maple Products Regulations, section 19, read. Rounding to three figures: from memory.",
    kind: "published",
  },
  canadaTypeHeight: {
    title: "Height of the numerals of a Canadian net quantity",
    detail:
      "Safe Food for Canadians Regulations, section 229 and its schedule, by principal display surface: from memory.",
    kind: "memory",
  },
  canadaLabelWords: {
    title: "Words of a Canadian maple label in both languages",
    detail:
      "Grade, colour class, taste, common name and origin in French, and the wording of the grade: from memory. The English classes were read.",
    kind: "memory",
  },
  largerDeclaration: {
    title: "Two declarations on one label",
    detail:
      "The larger of the metric and the customary declaration is the one tested: Handbook 133 as quoted in a letter of a metrology mailing list.",
    kind: "published",
  },
  typeHeight: {
    title: "Type height of the net contents, small panels",
    detail:
      "1/16 inch to 5 square inches and 1/8 inch to 25, as read in 21 CFR 102.28 and 16 CFR 500.21, which run parallel to 21 CFR 101.7.",
    kind: "published",
  },
  typeHeightAbove: {
    title: "Type height of the net contents, larger panels",
    detail: "21 CFR 101.7(i): the steps above 25 square inches, from memory.",
    kind: "memory",
  },
  chance: {
    title: "Normal and Student's t distribution",
    detail:
      "Worked out from their mathematical definitions; no fitted coefficients.",
    kind: "definition",
  },
  gs1CheckDigit: {
    title: "GS1 check digit, weights 3 and 1, modulo 10",
    detail:
      "Rule and printed examples of the GS1 pages of Hong Kong, India and Sweden, as read; the same rule for every length.",
    kind: "published",
  },
  gs1Keys: {
    title: "Make-up of GS1 case and pallet numbers",
    detail:
      "18 digits of a pallet: extension, company prefix, serial, check digit, read in a secondary page. Indicators 1 to 8 and 9 for variable measure, a prefix of 4 to 12 digits, and zeros before shorter numbers: from memory.",
    kind: "memory",
  },
  absorbancesAdd: {
    title: "Colour of a blend",
    detail:
      "Absorbances add in proportion to what is mixed (Beer-Lambert law, from memory of general physics), here by weight; scattering and the small differences in density are left out. Not checked on maple syrup.",
    kind: "memory",
  },
  commonPractice: {
    title: "Common practice in packing",
    detail: "Common practice, no source.",
    kind: "common practice",
  },
  arithmetic: {
    title: "Plain arithmetic",
    detail: "Follows from the definition of the words; nothing to look up.",
    kind: "definition",
  },
} as const satisfies Readonly<Record<string, Source>>;

export type SourceId = keyof typeof sources;
