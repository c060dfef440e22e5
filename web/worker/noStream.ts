// In place of Node's `stream`, which the XML reader asks for and does without: only its streaming side, unused here, needs it.
export {};
