// Which pours a change comes near to: those that it touches, and those that come right after one of them.

export function isNear(code: string, after: readonly string[], touched: ReadonlySet<string>): boolean {
  return touched.has(code) || after.some((earlier) => touched.has(earlier));
}
