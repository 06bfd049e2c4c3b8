// Every screen of the app and its address behind the #: the one place where they are listed for pictures
// and journeys.
export interface ScreenRoute {
  /** Also the name of its picture. */
  readonly name: string;
  readonly address: string;
}

export const screenRoutes: readonly ScreenRoute[] = [
  { name: 'board', address: '/board' },
  { name: 'shortfalls', address: '/shortfalls' },
  { name: 'designs', address: '/designs' },
  { name: 'yard', address: '/yard' },
  { name: 'pours', address: '/pours' },
  { name: 'book', address: '/book' },
];
