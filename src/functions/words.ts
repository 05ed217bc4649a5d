/** Says where a value stands, as "lots, row 3, price"; asked only when there is something to complain of. */
export type Words = () => string;
