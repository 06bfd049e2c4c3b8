// Hooks of a gang on the assembly sheet: where each goes and what hangs on it, and the rule they follow. What the
// slings and the crane make of it stands on the pick sheet.
import type { DrawnGang, SheetUnits } from './drawn-gang.ts';
import { el, of, type SheetElement } from './node.ts';
import { row } from './pieces-part.ts';

export interface HookRule {
  readonly capacityGrams: number;
  readonly ratedFor: 'sling-tension' | 'gang-weight';
  readonly minimum: number;
  readonly minimumAngleDeg?: number;
  readonly source: string;
}

export function hooksPart(gang: DrawnGang, rule: HookRule | null, units: SheetUnits): SheetElement {
  const { hooks } = gang;
  return of(
    'section',
    'part hooks',
    of('h2', 'part-name', 'Hooks and slings'),
    ...(rule === null ? [] : [of('p', 'plain', ruleWords(rule, units))]),
    ...(hooks.length === 0
      ? [of('p', 'plain', 'No place for a hook was found: see the findings.')]
      : [
          of(
            'table',
            'lines hook-lines',
            el('thead', {}, row('th', ['hook', 'along', 'up', 'share of the weight'])),
            el(
              'tbody',
              {},
              ...hooks.map(({ xNm, yNm, loadGrams }, index) =>
                row('td', [`H${index + 1}`, units.length(xNm), units.length(yNm), units.weight(loadGrams)]),
              ),
            ),
          ),
        ]),
    of(
      'p',
      'plain',
      `Slings, crane and wind: see the pick sheet. It is lifted from that, not from this sheet.`,
    ),
  );
}

function ruleWords(rule: HookRule, units: SheetUnits): string {
  const rated =
    rule.ratedFor === 'sling-tension' ? 'of pull along its sling' : 'of its share of the gang’s weight';
  const angle =
    rule.minimumAngleDeg === undefined
      ? ''
      : ` No sling flatter than ${rule.minimumAngleDeg}° from the horizontal.`;
  return `A hook is entered for ${units.weight(rule.capacityGrams)} ${rated} (source: ${rule.source}); at least ${rule.minimum} are used.${angle}`;
}
