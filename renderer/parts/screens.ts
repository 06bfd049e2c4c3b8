// The screens in the order in which they stand along the top.
export const screens = [
  { path: '/board', name: 'Board' },
  { path: '/shortfalls', name: 'Shortfalls' },
  { path: '/designs', name: 'Designs' },
  { path: '/yard', name: 'Yard' },
  { path: '/pours', name: 'Pours' },
  { path: '/rules', name: 'Rules' },
  { path: '/book', name: 'Book' },
] as const;

/** Those that stand beside another one: found by name, not along the top. */
export const screensBeside = [
  { path: '/board/day-end', name: 'Day’s end' },
  { path: '/board/work', name: 'Crew and crane' },
] as const;
