import { one } from "./one";
export const two = (): number => one() - 1;
