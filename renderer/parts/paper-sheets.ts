// The sheets of the yard's papers and things: what each is called, and where one goes back to from it.
export const paperSheets = {
  week: { name: 'Week plan', back: '/board', backName: 'Board' },
  shortfalls: { name: 'Shortfalls', back: '/shortfalls', backName: 'Shortfalls' },
  day: { name: 'Day sheet', back: '/board', backName: 'Board' },
  strip: { name: 'Strip ticket', back: '/yard/strip', backName: 'Strip tickets' },
  count: { name: 'Count sheet', back: '/yard/counts', backName: 'Counts' },
  picklist: { name: 'Pick list', back: '/yard/loading', backName: 'Loading' },
  loading: { name: 'Loading list', back: '/yard/loading', backName: 'Loading' },
  delivery: { name: 'Delivery note', back: '/yard/papers', backName: 'Papers' },
  return: { name: 'Return note', back: '/yard/papers', backName: 'Papers' },
  tags: { name: 'Tags', back: '/yard/gangs', backName: 'Gangs' },
} as const;

export type PaperSheetKind = keyof typeof paperSheets;

export function isPaperSheet(kind: string): kind is PaperSheetKind {
  return Object.hasOwn(paperSheets, kind);
}

/** @param id of the ticket, count, note, load or gang whose sheet it is */
export function paperSheetAddress(kind: PaperSheetKind, id: string): string {
  return `/sheets/${kind}/${encodeURIComponent(id)}`;
}
