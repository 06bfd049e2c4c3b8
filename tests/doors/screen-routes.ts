// Every screen of the app and its address behind the #, with something chosen on it where that shows more:
// the one place where they are listed, for pictures and for what is looked at on all of them.
export interface ScreenRoute {
  /** Also the name of its picture. */
  readonly name: string;
  readonly address: string;
}

export const screenRoutes: readonly ScreenRoute[] = [
  { name: 'board', address: '/board' },
  { name: 'shortfalls', address: '/shortfalls' },
  { name: 'designs', address: '/designs' },
  { name: 'design', address: '/designs/GD' },
  { name: 'design-on-side', address: '/designs/GT' },
  { name: 'design-new', address: '/designs/new' },
  { name: 'design-edit', address: '/designs/GC/edit' },
  { name: 'design-states', address: '/designs/GC/revisions' },
  { name: 'assembly-sheet', address: '/sheets/assembly/GC' },
  { name: 'pick-sheet', address: '/sheets/pick/GC' },
  { name: 'yard', address: '/yard' },
  { name: 'movements', address: '/yard?show=movements' },
  { name: 'booking', address: '/yard?slip=open' },
  { name: 'gangs', address: '/yard/gangs' },
  { name: 'gang-build', address: '/yard/gangs?add=open' },
  { name: 'lifting-gear', address: '/yard/gangs?show=gear&add=open' },
  { name: 'tags', address: '/sheets/tags/all-gangs' },
  { name: 'containers', address: '/yard/gangs?show=containers&add=open' },
  { name: 'counts', address: '/yard/counts' },
  { name: 'count-start', address: '/yard/counts?start=spot' },
  { name: 'look-alikes', address: '/yard/counts?show=look-alikes' },
  { name: 'count-classes', address: '/yard/counts?show=classes' },
  { name: 'count-on-a-phone', address: '/yard/phone' },
  { name: 'papers', address: '/yard/papers' },
  { name: 'note-new', address: '/yard/papers/new?kind=delivery' },
  { name: 'owed', address: '/yard/papers?show=owed' },
  { name: 'figures', address: '/yard/papers?show=figures&form=figure' },
  { name: 'foreign', address: '/yard/papers?show=foreign&form=swap' },
  { name: 'pick-list', address: '/yard/loading?for=pour:TB26:P01:A&given=open' },
  { name: 'make-loads', address: '/yard/loading?show=make' },
  { name: 'loads', address: '/yard/loading?show=loads' },
  { name: 'trucks', address: '/yard/loading?show=trucks&add=open' },
  { name: 'pick-list-sheet', address: '/sheets/picklist/pour%3ATB26%3AP01' },
  { name: 'condition', address: '/yard/condition' },
  { name: 'repairs', address: '/yard/condition?show=repairs&add=open' },
  { name: 'quarantine', address: '/yard/condition?show=quarantine&add=open' },
  { name: 'rates', address: '/yard/condition?show=rates' },
  { name: 'pours', address: '/pours' },
  { name: 'pour', address: '/pours/P08' },
  { name: 'fill', address: '/fill' },
  { name: 'pick', address: '/designs/GA/pick' },
  { name: 'rules', address: '/rules/OMB?table=locks' },
  { name: 'catalogue', address: '/rules/OMB?table=components' },
  { name: 'book', address: '/book' },
];
