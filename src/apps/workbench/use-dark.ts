import { useEffect, useState } from "react";

const KEPT = "workbench-look";

/** Dark or light: as the machine prefers, until the person chooses; the choice is kept in this browser. */
export function useDark(): readonly [boolean, (dark: boolean) => void] {
  const [chosen, setChosen] = useState(kept);
  const [preferred, setPreferred] = useState(prefersDark);
  useEffect(() => {
    const query = matchMedia("(prefers-color-scheme: dark)");
    const follow = (): void => setPreferred(query.matches);
    query.addEventListener("change", follow);
    return () => query.removeEventListener("change", follow);
  }, []);
  const dark = chosen ?? preferred;
  useEffect(() => {
    document.documentElement.dataset["look"] = dark ? "dark" : "light";
  }, [dark]);
  return [
    dark,
    (wanted) => {
      setChosen(wanted);
      keep(wanted);
    },
  ];
}

const prefersDark = (): boolean =>
  matchMedia("(prefers-color-scheme: dark)").matches;

/** A browser may refuse to keep anything; the choice then lasts as long as the page. */
function kept(): boolean | undefined {
  try {
    const look = localStorage.getItem(KEPT);
    return look === null ? undefined : look === "dark";
  } catch {
    return undefined;
  }
}

function keep(dark: boolean): void {
  try {
    localStorage.setItem(KEPT, dark ? "dark" : "light");
  } catch {
    // Nothing to do: the page still looks as chosen.
  }
}
