import { as, type Kilograms, type Share } from "../measures/quantity";
import {
  USUAL_TOLERANCE,
  weightDifference,
  type WeightDifference,
} from "../trade/totes/weight-difference";
import type { Book } from "./book";
import { moneyText, pounds } from "./checks/gathered";
import type { Finding } from "./finding";
import { contractPrice } from "./contract-price";
import { setting } from "./setting";
import type { ToteTicket } from "./tote-tickets";

/** A tote the buyer weighed too. */
export interface WeighedTote {
  readonly ticket: ToteTicket;
  readonly theirs: Kilograms;
  readonly difference: WeightDifference;
}

/** What buyers weigh otherwise than we do. */
export interface WeightDisputes {
  readonly tolerance: Share;
  /** Totes whose net weight the buyer has reported. */
  readonly reported: number;
  /** Those farther apart than the tolerance, the most money first. */
  readonly beyond: readonly WeighedTote[];
}

/** Holds every reported net weight against ours. A tote whose own weight or price is withheld is not compared. */
export function weightDisputes(
  book: Pick<Book, "settings">,
  tickets: readonly ToteTicket[],
  tolerance: Share | undefined = setting(book, "Weight tolerance"),
): WeightDisputes {
  const agreed = tolerance ?? USUAL_TOLERANCE;
  const weighed = tickets.flatMap((ticket): readonly WeighedTote[] => {
    const { net, contract, basis, row } = ticket;
    const theirs = row.buyerNet;
    const price = contract && contractPrice(book, contract).price;
    if (
      theirs === undefined ||
      net === undefined ||
      price === undefined ||
      basis === undefined
    )
      return [];
    return [
      {
        ticket,
        theirs,
        difference: weightDifference(
          { ours: net, theirs, price, basis, brix: row.brix },
          agreed,
        ),
      },
    ];
  });
  return {
    tolerance: agreed,
    reported: weighed.length,
    beyond: weighed
      .filter(({ difference }) => difference.isBeyond)
      .sort(
        (a, b) => Math.abs(b.difference.money) - Math.abs(a.difference.money),
      ),
  };
}

/** One finding a tote in dispute. */
export const disputeFindings = ({
  tolerance,
  beyond,
}: WeightDisputes): readonly Finding[] =>
  beyond.map(({ ticket, theirs, difference }) => ({
    where: `${ticket.row.place}, Buyer net lb`,
    found: `${ticket.row.ticket}: ${ticket.buyer} reports ${pounds(theirs)}, ${pounds(as<Kilograms>(Math.abs(difference.weight)))} ${difference.weight < 0 ? "less" : "more"} than our ${pounds(as<Kilograms>(theirs - difference.weight))}`,
    meaning: `${moneyText(Math.abs(difference.money), ticket.currency ?? "")} at the ticket's own price, beyond ${percent(tolerance)} of our weight`,
    todo: "compare the two scale tickets and the tares, and agree one weight in writing",
  }));

const percent = (share: number): string =>
  `${Number((share * 100).toPrecision(6))} %`;
