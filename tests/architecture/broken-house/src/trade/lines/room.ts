import { clock } from "../syrup/clock";
export const room = clock;
