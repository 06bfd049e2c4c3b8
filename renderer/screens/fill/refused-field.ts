// At which field of this screen a refusal of the core belongs.
import type { FillField } from './fill-texts.ts';

const places: readonly (readonly [RegExp, FillField])[] = [
  [/^wall\.(?:legs|turns)/u, 'legs'],
  [/^wall\.thickness/u, 'thickness'],
  [/^(?:(?:wall|column)\.)?height/u, 'height'],
  [/^(?:(?:wall|column)\.)?freeboard/u, 'freeboard'],
  [/^(?:wall\.)?rows/u, 'rows'],
  [/^wall\.start/u, 'startBy'],
  [/^wall\.end/u, 'endBy'],
  [/^wall\.insideCorner/u, 'insideLeg'],
  [/^wall\.outsideCorner/u, 'outsideLeg'],
  [/^column\.widthA/u, 'widthA'],
  [/^column\.widthB/u, 'widthB'],
  [/^maximumFiller/u, 'filler'],
  [/^tieTolerance/u, 'tolerance'],
  [/^limits\.length/u, 'mostLength'],
  [/^limits\.height/u, 'mostHeight'],
  [/^limits\.weight/u, 'mostWeight'],
  [/^useStock\.at/u, 'date'],
  [/^useStock/u, 'locations'],
  [/^system/u, 'system'],
];

/** Undefined where it belongs to none of them. */
export function refusedField(field: string | undefined): FillField | undefined {
  return field === undefined ? undefined : places.find(([place]) => place.test(field))?.[1];
}
