import { readFileSync } from "node:fs";

/** The parts of the client library a test drives. */
export interface OfficeLibrary {
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly OfficeExtension: typeof OfficeExtension;
  readonly bridge: { init(bridge: Bridge): void };
  /** What the library is told of where it runs. */
  runsIn(context: object): void;
}

/** The library hands its requests to this and is answered through `onMessageFromHost`, which it puts there itself. */
export interface Bridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost?(text: string): void;
}

let loaded: OfficeLibrary | undefined;

/**
 * The real client library of Office, run in this very realm and made global as a page makes it. The package is
 * pinned: the messages it sends are its own affair and may change with any version.
 */
export function loadOffice(): OfficeLibrary {
  if (loaded) return loaded;
  const source = readFileSync(
    require.resolve("@microsoft/office-js/dist/excel-win32-16.01.debug.js"),
    "utf8",
  );
  const page = emptyPage();
  // Its top-level names have to be the page's own, because parts of it look them up there.
  for (const [, name = ""] of source.matchAll(
    /^(?:var|function) ([A-Za-z_$][\w$]*)/gm,
  ))
    if (!(name in page)) page[name] = undefined;

  const run = new Function(
    "page",
    `with (page) { ${source}\n; return { Excel, Office, OfficeExtension }; }`,
  ) as (page: object) => Omit<OfficeLibrary, "bridge" | "runsIn"> & {
    readonly OfficeExtension: {
      readonly HostBridge: OfficeLibrary["bridge"];
      readonly CommonUtility: { _doApiNotSupportedCheck: boolean };
    };
  };
  const library = run(page);
  Object.assign(globalThis, library);
  // An old Excel refuses what it does not know; here the library itself does, by the version each member asks for.
  library.OfficeExtension.CommonUtility._doApiNotSupportedCheck = true;
  loaded = {
    ...library,
    bridge: library.OfficeExtension.HostBridge,
    // The context the library makes itself needs a real host and cannot be set.
    runsIn: (context) => {
      const office: object = Object.create(library.Office, {
        context: { value: context },
      });
      page["Office"] = office;
      Object.assign(globalThis, { Office: office });
    },
  };
  return loaded;
}

function emptyPage(): Record<string, unknown> {
  const nothing = (): undefined => undefined;
  const storage = { getItem: () => null, setItem: nothing };
  const page: Record<string, unknown> = {
    console,
    setTimeout,
    clearTimeout,
    setInterval,
    clearInterval,
    Promise,
    JSON,
    performance,
    URL,
    location: {
      href: "https://localhost/",
      search: "",
      protocol: "https:",
      host: "localhost",
      hash: "",
      pathname: "/",
    },
    navigator: { userAgent: "node", appVersion: "", language: "en-us" },
    sessionStorage: storage,
    localStorage: storage,
    addEventListener: nothing,
    removeEventListener: nothing,
    postMessage: nothing,
    name: "",
    external: {},
    document: {
      getElementsByTagName: () => [],
      createElement: () => ({
        setAttribute: nothing,
        style: {},
        appendChild: nothing,
      }),
      addEventListener: nothing,
      cookie: "",
      URL: "https://localhost/",
      body: {},
      head: { appendChild: nothing },
      getElementById: () => null,
      documentElement: {},
    },
  };
  for (const self of ["window", "self", "top", "parent"]) page[self] = page;
  return page;
}
