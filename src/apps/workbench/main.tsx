import { createRoot } from "react-dom/client";
import { ErrorBoundary } from "./error-boundary";
import { Workbench } from "./workbench";
import "./workbench.css";

const root = document.getElementById("workbench");
if (!root) throw new Error("The page has no place for the workbench");
createRoot(root).render(
  <ErrorBoundary>
    <Workbench />
  </ErrorBoundary>,
);
