/** The version of this program, as package.json has it: a test holds the two together. */
export const PROGRAM_VERSION = "0.1.0";
