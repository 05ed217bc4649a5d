import { lazy } from "react";

// The pane opens with the prices of a product. What is behind the other tabs, and what builds a sheet (the whole
// function library comes with it), is fetched when it is wanted.
export const BuildCard = lazy(async () => ({
  default: (await import("./price/build-card")).BuildCard,
}));
export const CopiesView = lazy(async () => ({
  default: (await import("./copies/copies-view")).CopiesView,
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
export const PriceListView = lazy(async () => ({
  default: (await import("./prices/price-list-view")).PriceListView,
}));
export const QuoteView = lazy(async () => ({
  default: (await import("./quote/quote-view")).QuoteView,
}));
export const RunPlannerView = lazy(async () => ({
  default: (await import("./run-planner/run-planner-view")).RunPlannerView,
}));
export const YearView = lazy(async () => ({
  default: (await import("./year/year-view")).YearView,
}));
export const TotesView = lazy(async () => ({
  default: (await import("./totes/totes-view")).TotesView,
}));
export const WhyView = lazy(async () => ({
  default: (await import("./why/why-view")).WhyView,
}));
