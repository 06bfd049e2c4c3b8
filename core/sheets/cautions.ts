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

export const stripCautions: readonly string[] = [
  'No form is removed until the employer responsible has determined, by the condition that is specified or by a test that is accepted, that the concrete is strong enough (29 CFR 1926.703(e)(1)).',
  'A strip time on this ticket is a forecast. A named person clears each strip, under the clause of the contract.',
  'A loosened gang is a falling wall: the crane is on and firm before the last ties come out, nobody is below, and no gang is left leaning on props.',
  'Loose hardware is taken off before it flies; the crane holds it until it is laid down or anchored where it stands next.',
  'Only what is ready goes into the plan; scrap needs a second name.',
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

export const pickListCautions: readonly string[] = [
  'No piece is given in place of another without a word beside it; no rail of another length without the designer.',
  'Bent, cracked or unmarked pieces are set apart, not given. Hooks and slings go only in date and with their tags readable.',
  'Stacks are taken down from the top; nobody pulls a piece out from under others, and nobody climbs a rack.',
];

export const loadingCautions: readonly string[] = [
  'The load is secured by the rules that bind the driver; what is drawn here is a way to stack it, not a way to secure it (49 CFR 393.100 and after, where that applies).',
  'Nobody stands between the load and a crane, a truck or another stack, nor under what is lifted on or off.',
  'The weight on the axles and the height over the road are not computed: weigh and measure where either is near a limit.',
  'Bundles are banded and on bearers; straps go over edge guards; what can roll or slide is stopped. Tied down again after the first miles and after every stop.',
  'Before a strap is let go somebody looks whether what it held can fall.',
];

/** Of a loaded truck. */
export const beforeLeaving: readonly string[] = [
  'Pieces counted against the note; photos taken.',
  'Heaviest lowest; nothing stands out beyond the deck.',
  'Bundles banded, boxes closed, loose pieces off the deck.',
  'Each stack tied down by itself, or blocked by another.',
  'Height over the road measured, and under every bridge of the way.',
  'Lights, plates and reflectors not covered.',
];

export const tagCautions: readonly string[] = [
  'A tag says which gang or container it is, not that it may be lifted: the pick sheet and the person in charge of the lift decide.',
  'Nobody stands on or under a suspended form or beside a load being landed (29 CFR 1926.1425).',
  'A tag that does not match what hangs on it is taken off and the gang or container set apart until somebody has looked.',
];

export const weekCautions: readonly string[] = [
  'A time on this sheet is a plan. Strip times are forecasts: no form is removed until the employer responsible has determined that the concrete is strong enough (29 CFR 1926.703(e)(1)).',
  'A pour with an open gate is not ready, whatever its date says.',
  'Crew hours and crane minutes rest on entered rates; wind, weather and other trades change them on the day.',
  'Nobody stands on or under a suspended form; the crane holds it until its braces and shoes are anchored.',
];

export const dayCautions: readonly string[] = [
  'A time on this sheet is a plan. A named person clears each strip under the clause of the contract; a forecast is never a release (29 CFR 1926.703(e)(1)).',
  'A step with an open gate does not begin until whoever answers for the gate has said so.',
  'Nobody on or under the suspended form; the crane holds it until its braces and shoes are anchored, and holds a gang to be stripped before its last ties come out.',
  'Loose hardware is taken off before a gang flies; no pick above the wind limit of whoever sets it.',
  'Guardrails are firm before anyone goes on a platform; fall protection from 6 ft on the face of forms (29 CFR 1926.501(b)(5)).',
];

export const shortfallCautions: readonly string[] = [
  'Hire sums follow the rates entered; the agreement and signed notes decide. Costs are rounded, and trucks and least periods are not in them.',
  'No piece is put in place of another, no rail of another length, without the designer.',
  'An earlier strip is a forecast until a named person clears it under the clause of the contract (29 CFR 1926.703(e)(1)).',
];

export function cautionsPart(own: readonly string[]): SheetElement {
  return of(
    'section',
    'part cautions',
    of('h2', 'part-name', 'Cautions'),
    of('ul', 'caution-list', ...[...own, ...everywhere].map((words) => of('li', 'caution', words))),
  );
}
