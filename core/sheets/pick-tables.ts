// Hooks, slings, crane and wind on the pick sheet.
import type { PickCheck } from '../pick/pick-check.ts';
import type { Crane, PickSetup } from '../pick/setup.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { el, of, type SheetElement } from './node.ts';
import { row } from './pieces-part.ts';
import { angleWords, percentWords, speedWords } from './pick-words.ts';

export function slingsPart(check: PickCheck, setup: PickSetup, units: SheetUnits): SheetElement {
  const rows = check.hooks.map(({ xNm, yNm, loadGrams, pullGrams, percent }, index) =>
    row('td', [
      `H${index + 1}`,
      `${units.length(xNm)} along, ${units.length(yNm)} up`,
      units.weight(loadGrams),
      pullGrams === null ? 'not known' : units.weight(pullGrams),
      percentWords(percent),
    ]),
  );
  return of(
    'section',
    'part hooks',
    of('h2', 'part-name', 'Hooks and slings'),
    ...(rows.length === 0
      ? []
      : [
          of(
            'table',
            'lines figure-lines',
            el(
              'thead',
              {},
              row('th', ['hook', 'place', 'its share', 'pull along the sling', 'of its capacity']),
            ),
            el('tbody', {}, ...rows),
          ),
        ]),
    ...hookWords(check, units).map((words) => of('p', 'plain', words)),
    ...slingWords(check, setup, units).map((words) => of('p', 'plain', words)),
  );
}

function hookWords(
  { hooksRequired, hookCapacityGrams, hooksRatedFor }: PickCheck,
  units: SheetUnits,
): string[] {
  if (hookCapacityGrams === null) return ['No rule table says what a hook carries.'];
  const rated = hooksRatedFor === 'gang-weight' ? 'its share of the weight' : 'the pull along its sling';
  const needed = hooksRequired === null ? '' : ` ${hooksRequired} needed.`;
  return [`A hook is entered for ${units.weight(hookCapacityGrams)}, rated for ${rated}.${needed}`];
}

function slingWords({ sling, flat }: PickCheck, setup: PickSetup, units: SheetUnits): string[] {
  const { equalisingGear: gear, legCapacityGrams } = setup;
  return [
    ...(sling === null
      ? []
      : [
          `Slings ${angleWords(sling.angleDeg)}; each pulls ${units.weight(sling.horizontalGrams)} along the gang.`,
        ]),
    gear === null
      ? 'Two legs are counted: a gang is rigid and two may take all of it.'
      : `The load is shared evenly by ${gear.name}, ${units.weight(gear.weightGrams)}.`,
    legCapacityGrams === undefined
      ? 'What a leg of the sling may pull is not entered: read its tag.'
      : `A leg may pull ${units.weight(legCapacityGrams)} by its tag: ${percentWords(sling?.legPercent ?? null)} used.`,
    ...(flat === null
      ? ['Picked up standing.']
      : [
          `Picked up from flat: the hooks together begin with ${units.weight(flat.startGrams)}, ${percentWords(100 * flat.startShare)} of the weight, and end with all of it.`,
        ]),
  ];
}

export function cranePart(
  check: PickCheck,
  setup: PickSetup,
  crane: Crane | null,
  units: SheetUnits,
): SheetElement {
  return of(
    'section',
    'part crane',
    of('h2', 'part-name', 'Crane and wind'),
    ...(crane === null
      ? [of('p', 'plain', 'No crane is named: no chart was looked at.')]
      : [
          of(
            'p',
            'plain',
            of('strong', 'crane-name', crane.name),
            `. ${units.weight(check.onCraneGrams)} on it, with what always hangs there. From ${crane.cautionPercent} % of the chart the weight is proven first; from ${crane.stopPercent} % the site refuses.`,
          ),
          of(
            'table',
            'lines figure-lines',
            el('thead', {}, row('th', ['at the', 'radius', 'chart', 'used', ''])),
            el(
              'tbody',
              {},
              ...check.cranePlaces.map(({ place, radiusNm, capacityGrams, percent }) =>
                row('td', [
                  place,
                  units.length(radiusNm),
                  capacityGrams === null ? 'outside the chart' : units.weight(capacityGrams),
                  percentWords(percent),
                  place === check.craneGoverns ? 'governs' : '',
                ]),
              ),
            ),
          ),
        ]),
    of('p', 'plain', windWords(setup, crane, units)),
  );
}

function windWords(setup: PickSetup, crane: Crane | null, units: SheetUnits): string {
  const { windMps, windSource } = setup;
  const whose = crane === null || crane.windWhose === '' ? 'nobody named' : crane.windWhose;
  const limit =
    crane === null || crane.windLimitMps === null
      ? 'No wind limit is entered.'
      : `Wind limit ${speedWords(crane.windLimitMps, units.system)}, set by: ${whose}.`;
  const expected =
    windMps === null
      ? 'The wind expected is not entered.'
      : `Expected ${speedWords(windMps, units.system)}, by: ${windSource === '' ? 'nobody named' : windSource}.`;
  return `${limit} ${expected} The wind measured at the crane before the pick decides.`;
}
