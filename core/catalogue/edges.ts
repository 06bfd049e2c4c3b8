// What stands at the left and right edge of a gang. Some edges need more locks than the joint alone.
export const edgeKinds = [
  'open',
  'next-gang',
  'against-concrete',
  'stop-end',
  'inside-corner',
  'outside-corner',
  't-junction',
  'column',
] as const;

export type EdgeKind = (typeof edgeKinds)[number];
