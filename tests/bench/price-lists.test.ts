import path from "node:path";
import { manyProducts } from "../../src/apps/cli/bench/many-products";
import { pricesBook } from "../../src/apps/cli/prices-workbook";
import { readFolder } from "../../src/apps/cli/read-book-files";
import { readBook } from "../../src/book/read";
import { root } from "../architecture/project-files";

const { contents } = readFolder(
  path.join(root, "sample-workbooks/fernkettle-hollow"),
);

test("the generated farm has as many products as asked, each with its materials, and no finding the demo has not", () => {
  const { book } = readBook(manyProducts(contents, 100));
  expect(book.products).toHaveLength(100);
  expect(new Set(book.products.map(({ product }) => product)).size).toBe(100);
  for (const { product } of book.products)
    expect(book.productMaterials.some((m) => m.product === product)).toBe(true);
});

test("the price list's formulas grow in a straight line with the products", () => {
  const formulas = (products: number): number =>
    pricesBook(manyProducts(contents, products))
      .sheets.filter(({ name }) => /^(Price|What)/.test(name))
      .flatMap(({ cells }) => cells)
      .filter(({ formula }) => formula !== undefined).length;
  const [few, many] = [formulas(50), formulas(500)];
  expect(many / few).toBeLessThan(10.5);
});
