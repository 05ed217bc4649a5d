export interface Notice {
  readonly title: string;
  readonly says: readonly string[];
  /** A button that loads the page again. */
  readonly canTryAgain: boolean;
}

/** Says something in place of the pane, without the pane's own code, which may be what failed. */
export function showNotice(place: HTMLElement, notice: Notice): void {
  const main = document.createElement("main");
  main.className = "notice";
  main.setAttribute("role", "alert");
  main.append(
    element("h1", notice.title),
    ...notice.says.map((sentence) => element("p", sentence)),
  );
  if (notice.canTryAgain) {
    const button = element("button", "Try again");
    button.type = "button";
    button.addEventListener("click", () => location.reload());
    main.append(button);
  }
  main.append(workbenchOffer());
  place.replaceChildren(main);
}

function workbenchOffer(): HTMLElement {
  const offer = element("p", "Without Excel, the ");
  const link = element("a", "workbench");
  link.href = "workbench/index.html";
  link.target = "_blank";
  link.rel = "noopener";
  offer.append(
    link,
    " has the same functions and the same pane in a browser, and opens and saves .xlsx files.",
  );
  return offer;
}

function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  text: string,
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
