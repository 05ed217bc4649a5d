import { startPane } from "./start-pane";

const place = document.getElementById("pane");
// This script may arrive before the page's body has been read.
if (place) void startPane(place);
else
  document.addEventListener("DOMContentLoaded", () => {
    const later = document.getElementById("pane");
    if (later) void startPane(later);
  });
