import { lazy } from "react";

// The pane opens with the prices of a product. What is behind the other tabs, and what builds a sheet (the whole
// function library comes with it), is fetched when it is wanted.
export const BuildCard = lazy(async () => ({
  default: (await import("./price/build-card")).BuildCard,
}));
export const FindingsView = lazy(async () => ({
  default: (await import("./findings/findings-view")).FindingsView,
}));
export const GuideView = lazy(async () => ({
  default: (await import("./guide/guide-view")).GuideView,
}));
export const NewProductView = lazy(async () => ({
  default: (await import("./new-product/new-product-view")).NewProductView,
}));
export const WhyView = lazy(async () => ({
  default: (await import("./why/why-view")).WhyView,
}));
