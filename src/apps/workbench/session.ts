import {
  useCallback,
  useEffect,
  useRef,
  useState,
  type RefObject,
} from "react";
import type { GridHost } from "../../hosts/grid/open-grid";
import { gridFunctions } from "../grid-functions";
import { sentenceOf } from "../pane/open-book";
import { openDemo, openFile, saveFile, type OpenedFile } from "./files";

/** The open book of the page: its grid, and what stands between it and the disk. */
export interface Session {
  readonly host: GridHost | undefined;
  readonly title: string;
  /** Goes up with every workbook opened. */
  readonly opening: number;
  readonly losses: readonly string[];
  readonly isChanged: boolean;
  /** What is being done just now, for example "Opening the demo book". */
  readonly work: string | undefined;
  readonly isOpening: boolean;
  /** A sentence to show once: what was saved, or what went wrong. */
  readonly notice: Notice | undefined;
  readonly closeNotice: () => void;
  readonly startDemo: () => Promise<unknown>;
  readonly open: (file: File) => Promise<unknown>;
  /** Whether it was saved; why not is then the notice. */
  readonly save: () => Promise<boolean>;
}

const SAVING = "Saving";

export interface Notice {
  readonly intent: "success" | "error" | "warning";
  readonly says: string;
}

export function useSession(
  container: RefObject<HTMLDivElement>,
  dark: boolean,
): Session {
  const [host, setHost] = useState<GridHost>();
  const [opened, setOpened] = useState({
    title: "",
    losses: [] as readonly string[],
    opening: 0,
  });
  const [isChanged, setChanged] = useState(false);
  const [work, setWork] = useState<string>();
  const [notice, setNotice] = useState<Notice>();
  const current = useRef<GridHost>();
  const darkNow = useRef(dark);
  darkNow.current = dark;

  const during = useCallback(
    async (says: string, how: () => Promise<void>): Promise<boolean> => {
      setWork(says);
      setNotice(undefined);
      try {
        await how();
        return true;
      } catch (problem) {
        setNotice({ intent: "error", says: sentenceOf(problem) });
        return false;
      } finally {
        setWork(undefined);
      }
    },
    [],
  );

  const show = useCallback(
    async ({ workbook, losses }: OpenedFile): Promise<void> => {
      if (!container.current) return;
      if (current.current) await current.current.replaceWorkbook(workbook);
      else {
        current.current = await startGrid(
          container.current,
          workbook,
          darkNow.current,
        );
        current.current.onEdit(() => setChanged(true));
      }
      setHost(current.current);
      setOpened(({ opening }) => ({
        title: workbook.title,
        losses,
        opening: opening + 1,
      }));
      setChanged(false);
      if (losses.length > 0)
        setNotice({
          intent: "warning",
          says: `This file holds ${losses.length === 1 ? "something" : "some things"} the workbench cannot show or keep: ${losses.join("; ")}.`,
        });
    },
    [container],
  );

  const startDemo = useCallback(
    () => during("Opening the demo book", async () => show(await openDemo())),
    [during, show],
  );
  const open = useCallback(
    (file: File) =>
      during(`Opening ${file.name}`, async () => show(await openFile(file))),
    [during, show],
  );
  const { title, losses } = opened;
  const save = useCallback(
    () =>
      during(SAVING, async () => {
        const grid = current.current;
        if (!grid) return;
        await grid.settled();
        // A copy that holds less than the file it came from must not carry that file's name.
        const name =
          losses.length > 0 ? `${title} (from the workbench)` : title;
        const book = grid.currentWorkbook();
        // Whatever is typed while the file is written counts as changed again.
        setChanged(false);
        const saved = await saveFile(book, name).catch((problem: unknown) => {
          setChanged(true);
          throw problem;
        });
        setNotice({
          intent: "success",
          says: `Saved as ${saved}, in your browser's download folder.`,
        });
      }),
    [during, title, losses],
  );

  useEffect(() => {
    void startDemo();
    return () => {
      current.current?.dispose();
      current.current = undefined;
    };
  }, [startDemo]);
  useEffect(() => host?.setDark(dark), [host, dark]);
  useWarnBeforeLeaving(isChanged);
  return {
    host,
    ...opened,
    isChanged,
    work,
    isOpening: work !== undefined && work !== SAVING,
    notice,
    closeNotice: () => setNotice(undefined),
    startDemo,
    open,
    save,
  };
}

// The grid is by far the largest part of the page; the frame is drawn before it arrives.
async function startGrid(
  container: HTMLElement,
  workbook: OpenedFile["workbook"],
  dark: boolean,
): Promise<GridHost> {
  const { openGrid } = await import("../../hosts/grid/open-grid");
  return openGrid({ container, workbook, functions: gridFunctions, dark });
}

function useWarnBeforeLeaving(isChanged: boolean): void {
  useEffect(() => {
    if (!isChanged) return;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener("beforeunload", warn);
    return () => removeEventListener("beforeunload", warn);
  }, [isChanged]);
}
