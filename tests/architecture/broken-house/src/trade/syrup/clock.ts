import { statSync } from "node:fs";
export const clock = statSync;
