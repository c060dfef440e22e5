/** What people type, paste, and let the cat walk over. */
export const badTexts: readonly string[] = [
  "letters",
  "-40",
  "1e99",
  "",
  `a paragraph\n${"pasted, of the two of us and the dog, on Saturdays;\r\n".repeat(40)}`.slice(0, 2000),
  "🚗🔋 ½",
  '<img src=x onerror="window.wasRun = true">',
  "1,2,3",
  "   ",
  "NaN",
  "Infinity",
  "=1+1",
];
