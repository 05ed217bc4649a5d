import { Component, type ReactNode } from "react";
import { sentenceOf } from "../pane/open-book";

interface Props {
  readonly children: ReactNode;
}

/** The last net: whatever breaks while drawing is said in a sentence instead of a blank page. */
export class ErrorBoundary extends Component<
  Props,
  { readonly says: string | undefined }
> {
  override state = { says: undefined };

  static getDerivedStateFromError(problem: unknown): {
    readonly says: string;
  } {
    return { says: sentenceOf(problem) };
  }

  override render(): ReactNode {
    if (this.state.says === undefined) return this.props.children;
    return (
      <main className="workbench-failed" role="alert">
        <h1>The workbench stopped</h1>
        <p>
          Something in the page itself went wrong. Files on your disk are
          untouched; changes since the last save are not on the disk.
        </p>
        <p>What it said: {this.state.says}</p>
        <p>Load the page again to go on.</p>
      </main>
    );
  }
}
