// The columns of designs.csv: those that speak of the design as a whole, and those of one panel or filler.
import { edgeKinds } from '../catalogue/edges.ts';
import type { Column } from './columns.ts';

const edge = `what stands there: ${edgeKinds.join(', ')}`;

export const designColumns = [
  { name: 'design', needed: true, wanted: 'the code of the design, on every row' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  { name: 'system', needed: true, wanted: 'the code of its panel system' },
  { name: 'revision', needed: true, wanted: 'the revision of the drawing, such as A' },
  { name: 'hand', needed: true, wanted: 'left, right or symmetrical' },
  { name: 'left edge', needed: false, wanted: `${edge}; blank for open` },
  { name: 'right edge', needed: false, wanted: `${edge}; blank for open` },
  { name: 'equalised', needed: false, wanted: 'yes where rigging shares the load evenly among all hooks' },
  { name: 'braced', needed: false, wanted: 'no where no braces stand at it; blank for yes' },
  {
    name: 'face width',
    needed: false,
    unit: 'length',
    wanted: 'the width of the wall face it must stay within',
  },
  {
    name: 'face height',
    needed: false,
    unit: 'length',
    wanted: 'the height of the wall face it must stay within',
  },
  { name: 'assemble hours', needed: true, wanted: 'shift hours to assemble it from loose pieces' },
  { name: 'break down hours', needed: true, wanted: 'shift hours to break it down' },
  { name: 'item', needed: true, wanted: 'the code of a panel, or filler' },
  { name: 'x', needed: true, unit: 'length', wanted: 'its left edge from the left, seen from the back' },
  { name: 'y', needed: true, unit: 'length', wanted: 'its lower edge from the foot' },
  { name: 'on side', needed: false, wanted: 'yes for a panel on its side; blank for upright' },
  { name: 'width', needed: false, unit: 'length', wanted: 'of a filler: its width' },
  { name: 'height', needed: false, unit: 'length', wanted: 'of a filler: its height' },
] as const satisfies readonly Column[];

export type DesignColumn = (typeof designColumns)[number]['name'];

/** They stand on the first row of a design; further rows repeat them or leave them blank. */
export const headColumns = [
  'name',
  'system',
  'revision',
  'hand',
  'left edge',
  'right edge',
  'equalised',
  'braced',
  'face width',
  'face height',
  'assemble hours',
  'break down hours',
] as const satisfies readonly DesignColumn[];
