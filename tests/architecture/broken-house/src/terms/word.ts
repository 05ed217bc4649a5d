import { z } from "zod";
export const word = z;
