/** "2" is the second reason on offer; any other text stands as typed. */
export function reasonInWords(typed: string | null, offered: readonly string[]): string | null {
  if (typed === null || !/^[1-9]$/.test(typed)) return typed;
  return offered[Number(typed) - 1] ?? typed;
}
