import { other } from "../file/other";
export const sideways = other;
