/** Where a line of a text ends, on whatever system it was written. */
export const LINE_END = /\r\n|\n|\r/;
