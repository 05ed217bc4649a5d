import { waitForExcel } from "../../../src/apps/taskpane/excel-answer";

type Listener = () => void;
const listeners = new Map<string, Listener[]>();
const listen = (event: string, listener: Listener): void =>
  void listeners.set(event, [...(listeners.get(event) ?? []), listener]);
const fire = (event: string): void =>
  (listeners.get(event) ?? []).forEach((listener) => listener());

const page = { readyState: "interactive", addEventListener: listen };
const answering = (host: string | null) => ({
  onReady: () => Promise.resolve({ host }),
});

beforeEach(() => {
  jest.useFakeTimers();
  listeners.clear();
  page.readyState = "interactive";
  Object.assign(globalThis, {
    document: page,
    addEventListener: listen,
    Office: undefined,
  });
});
afterEach(() => jest.useRealTimers());

test.each([
  ["Excel", "excel"],
  ["Word", "no excel"],
  [null, "no excel"],
])("a library that says %j is %s", async (host, answer) => {
  Object.assign(globalThis, { Office: answering(host) });
  expect(await waitForExcel(1000).inTime).toBe(answer);
});

test("a library that never came is told once the page has done loading", async () => {
  const { inTime } = waitForExcel(1000);
  fire("load");
  expect(await inTime).toBe("no library");
});

test("silence is told when the time is up, and the late answer still comes", async () => {
  let ready: (said: { host: string }) => void = () => undefined;
  Object.assign(globalThis, {
    Office: { onReady: () => new Promise((resolve) => (ready = resolve)) },
  });
  const { inTime, atLast } = waitForExcel(1000);
  await jest.advanceTimersByTimeAsync(999);
  let said = "";
  void inTime.then((answer) => (said = answer));
  await jest.advanceTimersByTimeAsync(0);
  expect(said).toBe("");
  await jest.advanceTimersByTimeAsync(1);
  expect(said).toBe("silence");
  ready({ host: "Excel" });
  expect(await atLast).toBe("excel");
});
