/** Whether a text is a number without a unit, which then means the unit shown beside its field. */
export function isBareNumber(text: string): boolean {
  return /^[\s\d.,+-]*$/.test(text);
}
