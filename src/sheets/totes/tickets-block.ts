import type { Block, Column } from "../model";
import { column, day, money, numberAt, textAt, weight } from "./columns";
import type { ToteFacts } from "./facts";
import { weightColumns } from "./weight-columns";

/** Lots of one tote whose grades are looked at. */
const LOTS_OF_A_TOTE = 4;

/** The columns a printed register holds: from the ticket to its invoice. */
export const TICKET_COLUMNS = 14;

/** Every tote that left by the day, one a row: nothing in it is typed. */
export const ticketsBlock = (facts: ToteFacts): Block => {
  const { column: of } = facts;
  const own = (key: Parameters<typeof of<"toteShipments">>[1]): string =>
    of("toteShipments", key);
  const contract = (key: Parameters<typeof of<"toteContracts">>[1]): string =>
    `INDEX(${of("toteContracts", key)},{row.contract_row})`;
  const ofContract = (key: Parameters<typeof of<"toteContracts">>[1]): string =>
    `IF(ISNUMBER({row.contract_row}),${contract(key)},"")`;
  return {
    kind: "table",
    name: "tickets",
    title: "Totes that left",
    rows: facts.tickets,
    columns: [
      column("ticket", "Ticket", textAt(own("ticket"))),
      column("shipped", "Shipped", numberAt(own("shipped")), day),
      column("contract", "Contract", textAt(own("contract"))),
      column(
        "buyer",
        "Buyer",
        `IF(${textAt(own("customer"))}<>"",${textAt(own("customer"))},${ofContract("customer")})`,
      ),
      column("bill", "Bill of lading", textAt(own("billOfLading"))),
      column("gross", "Gross lb", numberAt(own("gross")), weight),
      column("tare", "Tare lb", numberAt(own("tare")), weight),
      column(
        "net",
        "Net lb",
        'IF(AND({row.counts}="yes",ISNUMBER({row.gross}),ISNUMBER({row.tare})),IF({row.tare}<{row.gross},ROUND({row.gross}-{row.tare},10),""),"")',
        weight,
      ),
      column("brix", "Brix at 68 °F", numberAt(own("brix")), "0.0"),
      column(
        "gallons",
        "Gallons at 68 °F",
        'IF(AND(ISNUMBER({row.net}),ISNUMBER({row.density})),ROUND({row.net}/ROUND({row.density},{density_digits}),{gallon_digits}),"")',
        money,
      ),
      column("price", "Price", ofContract("price"), "#,##0.00##"),
      column(
        "amount",
        "Amount",
        'IF(ISNUMBER({row.quantity}),ROUND(ROUND({row.quantity}*{row.price},9),2),"")',
        money,
      ),
      column("currency", "Money", 'IF({row.basis}="","",LEFT({row.basis},3))'),
      column(
        "invoiced",
        "Invoice",
        `IF({row.counts}<>"yes","",IF(ISNUMBER(MATCH({row.bill},${of("invoices", "billOfLading")},0)),"yes","to invoice"))`,
      ),
      column("needs", "Needs", needs),
      column("basis", "Price basis", ofContract("basis")),
      column("quantity", "Quantity billed", quantity, "#,##0.00"),
      column(
        "per_lb",
        "Per lb",
        'IF(ISNUMBER({row.amount}),{row.amount}/{row.net},"")',
        "0.0000",
      ),
      column("billed", "On the ticket", numberAt(own("amount")), money),
      column(
        "differs",
        "Ticket less register",
        'IF(AND(ISNUMBER({row.amount}),ISNUMBER({row.billed})),IF(ABS({row.billed}-{row.amount})>0.005,ROUND({row.billed}-{row.amount},2),""),"")',
        money,
      ),
      column(
        "floor",
        "Least Brix agreed",
        ofContractNumber("minimumBrix"),
        "0.0",
      ),
      column(
        "light",
        "Brix under it",
        'IF(AND(ISNUMBER({row.net}),ISNUMBER({row.floor}),ISNUMBER({row.brix})),IF({row.brix}<{row.floor},ROUND({row.floor}-{row.brix},6),""),"")',
        "0.0",
      ),
      column(
        "cut",
        "Solids short, in money",
        'IF(AND(ISNUMBER({row.light}),ISNUMBER({row.amount})),{row.amount}*{row.light}/{row.floor},"")',
        money,
      ),
      column(
        "refused",
        "Grade not agreed",
        refusedGrades(contract("gradesAllowed")),
      ),
      column("deposit", "Deposit", numberAt(own("deposit")), money),
      column("back", "Tote back on", numberAt(own("returnedOn")), day),
      column(
        "days_out",
        "Days out",
        'IF(AND({row.counts}="yes",ISNUMBER({row.deposit})),IF({row.deposit}>0,IF(ISNUMBER({row.back}),MIN({row.back},{as_of}),{as_of})-{row.shipped},""),"")',
        "0",
      ),
      column(
        "state",
        "Tote is",
        'IF({row.days_out}="","",IF(ISNUMBER({row.back}),IF({row.back}<={as_of},"back","out"),"out"))',
      ),
      ...weightColumns(facts),
      column(
        "still_out",
        "Out so far, days",
        'IF({row.state}="out",{row.days_out},"")',
        "0",
      ),
      column(
        "counts",
        "Left by the day",
        'IF({row.ticket}="","",IF(ISNUMBER({row.shipped}),IF({row.shipped}<={as_of},"yes","no"),"no"))',
      ),
      column(
        "contract_row",
        "Contract, row",
        `IF({row.counts}="yes",IFERROR(MATCH({row.contract},${of("toteContracts", "contract")},0),""),"")`,
        "0",
      ),
      column(
        "density",
        "Lb per gallon",
        'IF(ISNUMBER({row.brix}),IF(AND({row.brix}>=60,{row.brix}<=75),SYRUP.POUNDS_PER_GALLON({row.brix}),""),"")',
        "0.0000",
      ),
      column(
        "solids",
        "Net × Brix",
        'IF(AND(ISNUMBER({row.net}),ISNUMBER({row.brix})),{row.net}*{row.brix},"")',
        weight,
      ),
      ...grades(facts),
    ],
  };

  function ofContractNumber(
    key: Parameters<typeof of<"toteContracts">>[1],
  ): string {
    return `IF(ISNUMBER({row.contract_row}),IF(ISNUMBER(${contract(key)}),${contract(key)},""),"")`;
  }
};

/** What the price counts, as the ticket prints it. */
const quantity =
  'IF(AND(ISNUMBER({row.net}),ISNUMBER({row.price})),IF({row.basis}="USD per lb",{row.net},IF({row.basis}="USD per gallon",{row.gallons},IF({row.basis}="USD per lb of syrup at 66.0 Brix",{row.net}*{row.brix}/66,IF({row.basis}="CAD per kg",ROUND({row.net}*0.45359237,{kilogram_digits}),"")))),"")';

const needs = [
  'IF({row.counts}="no","a day it left; ","")',
  'IF({row.counts}<>"yes","",IF(ISNUMBER({row.gross}),"","gross; ")&IF(ISNUMBER({row.tare}),"","tare; ")&IF(AND(ISNUMBER({row.gross}),ISNUMBER({row.tare})),IF({row.tare}<{row.gross},"","gross above tare: they may be swapped; "),"")&IF(ISNUMBER({row.density}),"","a Brix from 60 to 75; ")&IF(ISNUMBER({row.contract_row}),"","its contract; ")&IF(ISNUMBER({row.back}),IF({row.back}<{row.shipped},"a return that is not before it left; ",""),""))',
]
  .join("&")
  // A tote that leaves after the day is no trouble, only one without a day is.
  .replace(
    '{row.counts}="no"',
    'AND({row.counts}="no",NOT(ISNUMBER({row.shipped})))',
  );

/** The grade of each source lot, in the order the ticket names them: "26-11:274; 26-12:2633". */
const grades = ({ column: of }: ToteFacts): readonly Column[] =>
  Array.from({ length: LOTS_OF_A_TOTE }, (_, i) => {
    const source = textAt(of("toteShipments", "sourceLots"));
    const part = `TRIM(MID(SUBSTITUTE(${source},";",REPT(" ",200)),${i * 200 + 1},200))`;
    return column(
      `grade_${i + 1}`,
      `Grade of lot ${i + 1}`,
      `IF({row.counts}="yes",IFERROR(INDEX(${of("lots", "grade")},MATCH(TRIM(LEFT(${part},FIND(":",${part}&":")-1)),${of("lots", "lot")},0)),""),"")`,
    );
  });

const refusedGrades = (allowed: string): string =>
  `IF(ISNUMBER({row.contract_row}),IF(${allowed}&""="","",${Array.from(
    { length: LOTS_OF_A_TOTE },
    (_, i) => {
      const grade = `{row.grade_${i + 1}}`;
      return `IF(${grade}="","",IF(ISNUMBER(SEARCH("|"&${grade}&"|","|"&SUBSTITUTE(SUBSTITUTE(${allowed}," |","|"),"| ","|")&"|")),"",${grade}&"; "))`;
    },
  ).join("&")}),"")`;
