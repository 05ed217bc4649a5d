import { product } from "../costing/book-references";
import type { Block } from "../model";
import { calculated } from "./calculated";

/** Cases, pallets, what they weigh, and what is printed on them. */
export const packedBlock: Block = {
  kind: "lines",
  title: "Packed",
  lines: [
    calculated("per_pallet", "Cases on a pallet", {
      format: "#,##0",
      formula: `=${product("Cases per layer")}*${product("Layers per pallet")}`,
    }),
    calculated("full_cases", "Full cases", {
      format: "#,##0",
      formula: "=INT({bottles}/{per_case})",
    }),
    calculated("full_pallets", "Full pallets", {
      format: "#,##0",
      formula: "=INT({full_cases}/{per_pallet})",
    }),
    calculated("last_cases", "Full cases on the last pallet", {
      format: "#,##0",
      formula: "=MOD({full_cases},{per_pallet})",
    }),
    calculated("loose", "Bottles that fill no case", {
      format: "#,##0",
      formula: "={bottles}-{full_cases}*{per_case}",
    }),
    calculated("bottle_g", "A filled bottle", {
      unit: "g",
      format: "#,##0.0",
      formula: `=IF(ISNUMBER(${product("Empty bottle g")}),${product("Empty bottle g")}+{fill}*{lb_per_gal}*453.59237/3785.411784,"")`,
    }),
    calculated("case_lb", "A full case", {
      unit: "lb",
      format: "#,##0.00",
      formula:
        '=IF(AND(ISNUMBER({bottle_g}),ISNUMBER({empty_case})),({per_case}*{bottle_g}+{empty_case})/453.59237,"")',
    }),
    calculated("pallet_lb", "A full pallet", {
      unit: "lb",
      format: "#,##0",
      formula:
        '=IF(AND(ISNUMBER({case_lb}),ISNUMBER({empty_pallet})),{per_pallet}*{case_lb}+{empty_pallet},"")',
    }),
    calculated("last_lb", "The last pallet", {
      unit: "lb",
      format: "#,##0",
      formula:
        '=IF(ISNUMBER({pallet_lb}),IF({last_cases}+{loose}>0,{last_cases}*{case_lb}+IF({loose}>0,({loose}*{bottle_g}+{empty_case})/453.59237,0)+{empty_pallet},""),"")',
    }),
    calculated("all_lb", "All pallets", {
      unit: "lb",
      format: "#,##0",
      formula:
        '=IF(ISNUMBER({pallet_lb}),{full_pallets}*{pallet_lb}+N({last_lb}),"")',
    }),
    calculated("clock", "Start, as the coder keys it", {
      formula:
        '=IF(ISNUMBER({start}),TEXT(INT(INT(MOD({start},1)*1440+0.000001)/60),"00")&TEXT(MOD(INT(MOD({start},1)*1440+0.000001),60),"00"),"")',
    }),
    // Plain functions, not ours: a file opened without the add-in still shows the code that somebody keys in.
    calculated("lot_code", "Lot code", {
      formula:
        '=IF(ISNUMBER({start}),IF(ISNUMBER(FIND("DDD",{pattern})),SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE({pattern},"HHMM",{clock}),"hhmm",{clock}),"YYYY",TEXT(YEAR({start}),"0000")),"YY",RIGHT(YEAR({start}),2)),"DDD",TEXT(INT({start})-DATE(YEAR({start}),1,1)+1,"000")),"L",{letters}),NA()),"")',
    }),
    calculated("best_by", "Best by", {
      format: "yyyy-mm-dd",
      formula:
        '=IF(AND(ISNUMBER({start}),N({months})>0),SYRUP.BEST_BY(INT({start}),{months}),"")',
    }),
    calculated("bottle_barcode", "Barcode of a bottle", {
      formula: `=${product("Bottle barcode")}&""`,
    }),
    calculated("case_barcode", "Barcode of a case", {
      formula: `=${product("Case barcode")}&""`,
    }),
  ],
};
