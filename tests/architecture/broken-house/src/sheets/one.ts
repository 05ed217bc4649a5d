import { two } from "./two";
export const one = (): number => two() + 1;
