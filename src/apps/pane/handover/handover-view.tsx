import { useEffect, useMemo, useState, type ReactNode } from "react";
import {
  Button,
  Checkbox,
  Radio,
  RadioGroup,
  Spinner,
} from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import {
  type Audience,
  audienceNames,
  audiences,
  noTicks,
  type Ticks,
} from "../../../sheets/handover/audiences";
import {
  type Copy,
  copyFor,
  type CopyQuestion,
} from "../../../sheets/handover/copy";
import { copyIn } from "../../../sheets/words/french-copy";
import type { Language } from "../../../sheets/words/language";
import {
  copyInUnits,
  type UnitSystem,
  unitSystemOf,
} from "../../../sheets/metric/unit-system";
import { askedText } from "../../../sheets/handover/read-asked";
import { LanguageChoice } from "../language-choice";
import { useAnnounce } from "../last-write";
import { sentenceOf, type OpenBook } from "../open-book";
import { Section } from "../section";
import { usePaneStyles } from "../styles";
import { deliver } from "./deliver";
import { offered, type Offered, openSheets } from "./open-sheets";
import { PreviewView } from "./preview-view";
import { TopicTicks } from "./topic-ticks";
import { UnitsChoice } from "./units-choice";

/** "Hand over a copy": which sheets, for whom, what of them, and what that leaves out, before a file is made. */
export function HandoverView(props: {
  readonly host: Host;
  readonly book: OpenBook;
}): ReactNode {
  const { host, book } = props;
  const pane = usePaneStyles();
  const announce = useAnnounce();
  const [audience, setAudience] = useState<Audience>("partner");
  const [ticks, setTicks] = useState<Ticks>(noTicks);
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [language, setLanguage] = useState<Language>("en");
  const [units, setUnits] = useState(() => unitSystemOf(book.tables));
  const [busy, setBusy] = useState(false);
  const [unwritten, setUnwritten] = useState<string>();
  const offers = useOffers(host, book);
  const wanted = useMemo(
    () =>
      offers?.filter(({ asked }) => chosen.includes(askedText(asked))) ?? [],
    [offers, chosen],
  );
  const { question, trouble } = useQuestion(host, book, wanted);
  const made = useMemo(
    () => question && madeOf({ ...question, audience, ticks }, units),
    [question, audience, ticks, units],
  );
  if (!offers) return <Spinner label="Looking for sheets …" />;
  if (offers.length === 0)
    return (
      <p className={pane.plain}>
        There is no costing sheet, price list, quote or statement in this
        workbook yet. Build one, and a copy of it can leave the house here.
      </p>
    );
  const ready = made && "copy" in made ? made : undefined;
  const wrong =
    unwritten ??
    trouble ??
    (made && "trouble" in made ? made.trouble : undefined);
  const write = async (copy: Copy): Promise<void> => {
    setBusy(true);
    setUnwritten(undefined);
    try {
      const name = `${wanted.map(({ words }) => words).join(", ")} for ${audience}`;
      const read = copyInUnits(copyIn(copy, language), units);
      announce({ says: await deliver(host, read, name) });
    } catch (problem) {
      setUnwritten(sentenceOf(problem));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <p className={pane.quiet}>
        A copy opens anywhere without the add-in. It holds what its reader may
        see and nothing else; this workbook stays as it is.
      </p>
      <Section title="Sheets">
        <div role="group" aria-label="Sheets to hand over">
          {offers.map(({ asked, words }) => (
            <div key={askedText(asked)}>
              <Checkbox
                label={words}
                checked={chosen.includes(askedText(asked))}
                onChange={(_, { checked }) => {
                  setUnwritten(undefined);
                  setChosen(
                    checked === true
                      ? [...chosen, askedText(asked)]
                      : chosen.filter((one) => one !== askedText(asked)),
                  );
                }}
              />
            </div>
          ))}
        </div>
      </Section>
      <Section title="For whom">
        <RadioGroup
          aria-label="For whom"
          value={audience}
          onChange={(_, { value }) => {
            const found = audienceNames.find((one) => one === value);
            if (!found) return;
            setAudience(found);
            // What was ticked was ticked for somebody else.
            setTicks(noTicks);
            setUnwritten(undefined);
          }}
        >
          {audienceNames.map((one) => (
            <Radio key={one} value={one} label={audiences[one].words} />
          ))}
        </RadioGroup>
      </Section>
      <LanguageChoice value={language} change={setLanguage} />
      <UnitsChoice value={units} change={setUnits} />
      <TopicTicks audience={audience} ticks={ticks} change={setTicks} />
      {wrong !== undefined && <p role="alert">{wrong}</p>}
      {wanted.length > 0 && !question && !trouble && (
        <Spinner label="Reading the sheets …" />
      )}
      {ready && <PreviewView preview={ready.preview} />}
      <div>
        <Button
          appearance="primary"
          disabled={busy || !ready}
          icon={busy ? <Spinner size="tiny" /> : null}
          onClick={() => ready && void write(ready.copy)}
        >
          {busy ? "Writing and searching the copy …" : "Write the copy"}
        </Button>
        {wanted.length === 0 && (
          <p className={pane.quiet}>Choose a sheet first.</p>
        )}
      </div>
    </>
  );
}

/** The copy in the book's own units and language, and what its reader's units leave of it. */
function madeOf(
  question: CopyQuestion,
  units: UnitSystem,
):
  | { readonly copy: Copy; readonly preview: Copy["preview"] }
  | { readonly trouble: string } {
  try {
    const copy = copyFor(question);
    return { copy, preview: copyInUnits(copy, units).preview };
  } catch (problem) {
    return { trouble: sentenceOf(problem) };
  }
}

function useOffers(host: Host, book: OpenBook): readonly Offered[] | undefined {
  const [offers, setOffers] = useState<readonly Offered[]>();
  useEffect(() => {
    let current = true;
    void offered(host, book).then((found) => current && setOffers(found));
    return () => {
      current = false;
    };
  }, [host, book]);
  return offers;
}

type Question = Omit<CopyQuestion, "audience" | "ticks">;

/** The chosen sheets as they now stand, read again after every edit. */
function useQuestion(
  host: Host,
  book: OpenBook,
  wanted: readonly Offered[],
): { readonly question?: Question; readonly trouble?: string } {
  const [read, setRead] = useState<{
    readonly question?: Question;
    readonly trouble?: string;
  }>({});
  useEffect(() => {
    let current = true;
    setRead({});
    if (wanted.length > 0)
      openSheets(host, book, wanted).then(
        (question) => current && setRead({ question }),
        (problem: unknown) =>
          current && setRead({ trouble: sentenceOf(problem) }),
      );
    return () => {
      current = false;
    };
  }, [host, book, wanted]);
  return read;
}
