import { Component, type ReactNode } from "react";

interface Props {
  readonly children: ReactNode;
  /** Told what was thrown while drawing; the pane is gone by then. */
  readonly broke: (problem: unknown) => void;
}

/** Whatever breaks while the pane is drawn goes to the page's own notice instead of leaving it blank. */
export class ErrorBoundary extends Component<
  Props,
  { readonly isBroken: boolean }
> {
  override state = { isBroken: false };

  static getDerivedStateFromError(): { readonly isBroken: boolean } {
    return { isBroken: true };
  }

  override componentDidCatch(problem: unknown): void {
    this.props.broke(problem);
  }

  override render(): ReactNode {
    return this.state.isBroken ? null : this.props.children;
  }
}
