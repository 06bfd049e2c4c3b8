// What the check makes of a pick, in plain sight at the head of the sheet: a refusal with the split that works,
// or that nothing was found against it, which is no permission.
import { never } from '../answer.ts';
import type { PickCheck } from '../pick/pick-check.ts';
import type { Split } from '../pick/split.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { of, type SheetElement, type SheetNode } from './node.ts';

/** `split` is looked for where the pick is refused; `check` is null where nothing about the pick is entered. */
export function verdictPart(check: PickCheck | null, split: Split | null, units: SheetUnits): SheetElement {
  if (check === null)
    return box('Not checked', 'No rigging, no crane and no radius are entered for this gang.', [
      'Only its weights are on this sheet. Enter how it is picked and print it again.',
    ]);
  const stops = check.findings.filter(({ severity }) => severity === 'stop').length;
  switch (check.verdict) {
    case 'refused':
      return box(
        'Refused',
        `Not to be picked so: ${stops} ${stops === 1 ? 'stop' : 'stops'} below.`,
        splitWords(split, units),
      );
    case 'caution':
      return box(
        'Caution',
        'No limit that is entered is passed, but somebody answers for the cautions below.',
        [],
      );
    case 'nothing-found':
      return box('Nothing found', 'No limit that is entered is passed. That is no permission to lift.', []);
    default:
      return never(check.verdict);
  }
}

function box(word: string, words: string, more: readonly string[]): SheetElement {
  const lines: SheetNode[] = more.map((line) => of('p', 'verdict-more', line));
  const className = word === 'Refused' || word === 'Not checked' ? 'verdict verdict-stop' : 'verdict';
  return of(
    'section',
    className,
    of('p', 'verdict-line', of('strong', 'verdict-word', word), ` ${words}`),
    ...lines,
  );
}

function splitWords(split: Split | null, units: SheetUnits): readonly string[] {
  if (split === null) return [];
  switch (split.kind) {
    case 'none':
      return [
        'No split along its joints gives parts that pass: another crane, another place or another gang.',
      ];
    case 'not-finished':
      return ['It has too many joints to try every split; none is proposed.'];
    case 'found': {
      const parts = split.parts.map(({ check }, index) => {
        const { widthNm, heightNm } = check.takeOff;
        return `part ${index + 1}: ${units.length(widthNm)} × ${units.length(heightNm)}, ${units.weight(check.onCraneGrams)} on the crane`;
      });
      const picks = split.extraPicks === 1 ? '1 pick more' : `${split.extraPicks} picks more`;
      return [
        `The lightest split along its joints that no stop is found for, from the left or the foot: ${parts.join('; ')}.`,
        `It takes ${picks} to set and ${picks} to strip.`,
      ];
    }
    default:
      return never(split);
  }
}
