import { word } from "../terms/word";
export const upward = word;
