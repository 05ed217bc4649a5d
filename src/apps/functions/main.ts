import { functions } from "../../functions";
import { associateAll } from "../../hosts/excel/associate";

// Nothing is waited for: Excel may ask for a value before it says it is ready. Where its library did not arrive there
// is nobody to hand the functions to; the page says so (src/apps/taskpane).
if (typeof CustomFunctions !== "undefined") associateAll(functions);
