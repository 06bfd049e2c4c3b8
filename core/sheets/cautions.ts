// What stands on every sheet whatever is on it. The statements are the same everywhere; regulations are pointers
// to be read again, as the sheet itself says.
import { of, type SheetElement } from './node.ts';

const everywhere: readonly string[] = [
  'Planning aid only: not a design, a lifting plan, a permit or an inspection.',
  'Weights come from entered piece weights; the competent person checks them before anything is lifted.',
  'The maker’s instructions for the equipment in use, local codes, and a licensed engineer or competent person come first.',
  'A figure marked default has no source; replace it with your own record.',
  'Regulation numbers are pointers, not legal advice; read the text in force.',
  'Superseded once a newer revision exists: ask before you build or lift from an older one.',
];

export const assemblyCautions: readonly string[] = [
  'Formwork is designed, built, braced and maintained for every load it meets, and drawings with their revisions are on site (29 CFR 1926.703(a)).',
  'Nobody stands on or under a suspended form. Guardrails are firm before anyone goes on a platform; fall protection from 6 ft on the face of forms (29 CFR 1926.501(b)(5)).',
  'No piece is put in place of another, no rail of another length, without the designer.',
];

export const pickCautions: readonly string[] = [
  'Nobody on or under the suspended form; only those hooking, unhooking or guiding it come near, and the route passes over nobody (29 CFR 1926.1425).',
  'The crane holds the form until its braces and shoes are anchored.',
  'Hooks that latch, rigged by a qualified rigger. Lifting gear for panels is marked and, if specially made, proof-tested to 125 % (29 CFR 1926.251(a)(4)).',
  'Above 75 % of the chart the weight is known from a reliable source; wind, ice and snow are allowed for (29 CFR 1926.1417(o), (n)).',
  'Wind, crane and radius values are entries or forecasts, with their source; the limit named by its owner decides, not this sheet.',
];

export const countCautions: readonly string[] = [
  'Nobody climbs on stacks or racks, and nobody counts under a suspended load or beside one being landed.',
  'Stacks that lean, bundles with a broken band and bent racks are not touched: say so, and count them once they are put right.',
  'Pieces that are bent, cracked or missing their mark are set apart and counted as such; they are not repaired by the counter.',
];

export const noteCautions: readonly string[] = [
  'Nobody stands between a load and the crane, or under it; bundles are slung so that no piece slides out, and hooks latch (29 CFR 1926.1425).',
  'The driver and whoever loads answer for what is tied down; weights here are those of the pieces alone.',
  'Both sides count before they sign. What differs is written down here, the same day; a signed figure is never changed.',
];

export function cautionsPart(own: readonly string[]): SheetElement {
  return of(
    'section',
    'part cautions',
    of('h2', 'part-name', 'Cautions'),
    of('ul', 'caution-list', ...[...own, ...everywhere].map((words) => of('li', 'caution', words))),
  );
}
