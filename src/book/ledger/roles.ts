import { plainText } from "./written-units";

/** What a column of somebody's tote ledger can be. */
export const ledgerRoles = [
  "ticket",
  "date",
  "buyer",
  "contract",
  "gross",
  "tare",
  "net",
  "unit",
  "brix",
  "price",
  "basis",
  "currency",
  "amount",
  "lot",
  "invoice",
  "paid",
] as const;
export type LedgerRole = (typeof ledgerRoles)[number];

/** How each is called for people, in English and French. */
export const roleLabels: Readonly<
  Record<LedgerRole, readonly [string, string]>
> = {
  ticket: ["Ticket", "Bon"],
  date: ["Date shipped", "Date d'expédition"],
  buyer: ["Buyer", "Acheteur"],
  contract: ["Contract", "Contrat"],
  gross: ["Gross weight", "Poids brut"],
  tare: ["Tare", "Tare"],
  net: ["Net weight", "Poids net"],
  unit: ["Unit of weight", "Unité de poids"],
  brix: ["°Brix", "°Brix"],
  price: ["Price", "Prix"],
  basis: ["Price basis", "Base du prix"],
  currency: ["Currency", "Monnaie"],
  amount: ["Amount", "Montant"],
  lot: ["Lot", "Lot"],
  invoice: ["Invoice", "Facture"],
  paid: ["Paid", "Payé"],
};

/** Words of a heading that speak for a role, without accents; the longest that is found decides. */
const words: Readonly<Record<LedgerRole, readonly string[]>> = {
  ticket: [
    ..."ticket,tote ticket,scale ticket,weigh slip,slip,tote,tote no,tote number,tkt".split(
      ",",
    ),
    ..."billet,billet de pesee,bon,bon de pesee,no de bon,no bon,bon de citerne,citerne,no citerne,bordereau".split(
      ",",
    ),
  ],
  date: [
    ..."date,shipped,ship date,shipped on,date shipped,date out,day,went out,loaded on,pickup date".split(
      ",",
    ),
    ..."jour,expedie,expedie le,date d expedition,livre le,date de livraison,date de sortie,sortie".split(
      ",",
    ),
  ],
  buyer: [
    ..."buyer,customer,client,sold to,ship to,company,who,account,customer name,buyer name".split(
      ",",
    ),
    ..."acheteur,vendu a,destinataire,nom du client,nom de l acheteur,compagnie".split(
      ",",
    ),
  ],
  contract: [
    ..."contract,po,order,agreement,contract no".split(","),
    "contrat",
    "no de contrat",
  ],
  gross: [
    ..."gross,gross weight,gross wt,full,full weight,weight full,loaded,scale in".split(
      ",",
    ),
    ..."brut,poids brut,plein,poids plein,pesee pleine".split(","),
  ],
  tare: [
    ..."tare,tare weight,empty,empty weight,weight empty".split(","),
    ..."vide,poids vide,pesee vide,poids de la tare".split(","),
  ],
  net: [
    ..."net,net weight,net wt,nett,syrup weight,syrup lb,weight of syrup".split(
      ",",
    ),
    ..."poids net,sirop net,poids du sirop".split(","),
  ],
  unit: [
    "unit",
    "units",
    "unit of weight",
    "unite",
    "unite de poids",
    "lb/kg",
    "kg/lb",
    "lb or kg",
  ],
  brix: [
    ..."brix,bx,°bx,°brix,degree brix,sugar,solids".split(","),
    "degre brix",
    "degres brix",
    "deg brix",
  ],
  price: [
    ..."price,unit price,rate,price each,price agreed,$/lb,$/gal,$/kg".split(
      ",",
    ),
    ..."prix,prix unitaire,tarif,taux,prix convenu".split(","),
  ],
  basis: [
    "basis",
    "price basis",
    "priced",
    "priced by",
    "base",
    "base du prix",
    "base de prix",
  ],
  currency: [
    ..."currency,money,cur,curr,usd/cad,cad/usd".split(","),
    "devise",
    "monnaie",
  ],
  amount: [
    ..."amount,value,line total,invoice total,invoice amount,amount due,total,total price,sale,extended".split(
      ",",
    ),
    ..."montant,montant facture,montant total,valeur".split(","),
  ],
  lot: [
    ..."lot,lots,batch,source lot,source lots,from lot,lot no,lot code,drum lot,lot used".split(
      ",",
    ),
    ..."no lot,no de lot,lot source,lots source,lots d origine,lot d origine,provenance".split(
      ",",
    ),
  ],
  invoice: [
    ..."invoice,inv,invoice no,invoice number,inv no,bill no,bill of lading,bol,invoiced".split(
      ",",
    ),
    ..."facture,no facture,no de facture,connaissement,numero de facture".split(
      ",",
    ),
  ],
  paid: [
    ..."paid,paid on,date paid,payment,payment date,payment received,received on,cheque,check,settled,amount paid".split(
      ",",
    ),
    ..."paye,paye le,regle,regle le,encaisse,encaisse le,paiement,date de paiement,recu le".split(
      ",",
    ),
  ],
};

/** Headings that look like a role and are none. */
const others: readonly string[] = [
  ..."invoice date,date of invoice,due date,due,terms,deposit,tote deposit,returned,tote returned,returned on,gallons,gal,us gal,volume,litres,lb per gal,lb/gal,density,tote kind,tote size,tote type,truck,driver,seal,note,notes,remarks,balance,balance owing,owing,still owing,days,age,grade,colour,color,temperature,temp,contract balance,contract left,gross margin,net price".split(
    ",",
  ),
  ..."date de facture,date facture,echeance,consigne,retour,retourne,gallons us,litre,litres,remarque,remarques,solde,classe,couleur,camion,chauffeur,sorte de citerne,temperature,commentaire".split(
    ",",
  ),
];

interface Phrase {
  readonly role: LedgerRole | undefined;
  readonly text: string;
}

const phrases: readonly Phrase[] = [
  ...others.map((text) => ({ role: undefined, text })),
  ...ledgerRoles.flatMap((role) => words[role].map((text) => ({ role, text }))),
].sort((a, b) => b.text.length - a.text.length);

/** What a heading says its column is, and how much of the heading said so (0 to 1); undefined for one we do not know. */
export function roleInHeading(
  heading: string,
):
  { readonly role: LedgerRole | undefined; readonly sure: number } | undefined {
  const plain = plainText(heading)
    .replace(/#/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  // "$/lb" is words of its own; a unit in brackets or after the words is not.
  const spoken = ` ${plain} `;
  const found = phrases.find(({ text }) => spoken.includes(` ${text} `));
  return found && { role: found.role, sure: found.text.length / plain.length };
}
