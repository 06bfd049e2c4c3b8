// How many rows go into one statement, so that it stays within SQLite's number of parameters.

const rowsAtOnce = 400;

export function chunks<T>(rows: readonly T[]): readonly (readonly T[])[] {
  const lists: T[][] = [];
  for (let start = 0; start < rows.length; start += rowsAtOnce)
    lists.push(rows.slice(start, start + rowsAtOnce));
  return lists;
}
