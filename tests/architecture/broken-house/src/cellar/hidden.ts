import { upward } from "../measures/upward";
// @ts-expect-error it is missing on purpose
import { nothing } from "./nowhere";
export const hidden = [upward, nothing] as readonly unknown[];
