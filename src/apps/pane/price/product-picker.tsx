import { useEffect, useState, type ReactNode } from "react";
import {
  Combobox,
  Field,
  Option,
  makeStyles,
} from "@fluentui/react-components";
import { usePaneStyles } from "../styles";
import { productsMatching, type Product } from "./products";

/** Find a product by code or by any words of its description. */
export function ProductPicker(props: {
  readonly products: readonly Product[];
  readonly chosen: string | undefined;
  readonly choose: (code: string) => void;
}): ReactNode {
  const { products, chosen, choose } = props;
  const pane = usePaneStyles();
  const styles = useStyles();
  const [typed, setTyped] = useState(chosen ?? "");
  useEffect(() => setTyped(chosen ?? ""), [chosen]);
  const isSearching = typed !== "" && typed !== chosen;
  const offered = isSearching ? productsMatching(products, typed) : products;
  return (
    <Field label="Product">
      <Combobox
        value={typed}
        selectedOptions={chosen === undefined ? [] : [chosen]}
        placeholder="Type a code or a few words"
        listbox={{ className: styles.listbox }}
        onChange={(event) => setTyped(event.target.value)}
        onOptionSelect={(_, { optionValue }) => {
          if (optionValue === undefined) return;
          setTyped(optionValue);
          choose(optionValue);
        }}
        onBlur={() => setTyped(chosen ?? "")}
      >
        {offered.length === 0 && (
          <Option disabled text="nothing found">
            No product has these words
          </Option>
        )}
        {offered.map(({ code, description }) => (
          <Option key={code} value={code} text={code}>
            <span className={styles.option}>
              <span>{code}</span>
              <span className={pane.quiet}>{description}</span>
            </span>
          </Option>
        ))}
      </Combobox>
    </Field>
  );
}

const useStyles = makeStyles({
  listbox: { maxHeight: "320px" },
  option: { display: "flex", flexDirection: "column" },
});
