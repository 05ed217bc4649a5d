import type { ReactNode } from "react";
import { Radio, RadioGroup } from "@fluentui/react-components";
import {
  type Language,
  languages,
  languageWords,
} from "../../sheets/words/language";
import { Section } from "./section";

/** The language of what leaves the house; the pane itself stays as it is. */
export const LanguageChoice = (props: {
  readonly value: Language;
  readonly change: (language: Language) => void;
}): ReactNode => (
  <Section title="Language">
    <RadioGroup
      layout="horizontal"
      aria-label="Language of the reader"
      value={props.value}
      onChange={(_, { value }) => {
        const found = languages.find((one) => one === value);
        if (found) props.change(found);
      }}
    >
      {languages.map((one) => (
        <Radio key={one} value={one} label={languageWords[one]} />
      ))}
    </RadioGroup>
  </Section>
);
