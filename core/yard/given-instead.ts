// What was given in place of what the pick list says: never silently. Each line that gives another component is a
// finding, and a remark on the note by which it went out.
import type { Wanted } from './take-from.ts';

export interface GivenLine {
  readonly component: string;
  readonly quantity: number;
  /** What the list asked for; null where it was given as listed. */
  readonly insteadOf: string | null;
}

export interface GivenFacts {
  readonly kind: string;
  readonly name: string;
  readonly lengthNm?: number | undefined;
}

export interface InsteadFinding {
  readonly rule: 'given-instead';
  readonly severity: 'stop' | 'caution';
  readonly message: string;
  readonly where: string;
}

/**
 * A rail of another length is a stop; any other substitution a caution; both for the designer to answer.
 * @param forWhat the gang, pour or order, in words
 */
export function givenInstead(
  lines: readonly GivenLine[],
  components: ReadonlyMap<string, GivenFacts>,
  forWhat: string,
): InsteadFinding[] {
  return lines.flatMap(({ component, quantity, insteadOf }): InsteadFinding[] => {
    if (insteadOf === null || insteadOf === component) return [];
    const [given, asked] = [components.get(component), components.get(insteadOf)];
    const isRail = given?.kind === 'stiffening-rail' && asked?.kind === 'stiffening-rail';
    const isOtherLength = isRail && given.lengthNm !== asked.lengthNm;
    const what = isOtherLength ? 'a rail of another length' : 'another component';
    return [
      {
        rule: 'given-instead',
        severity: isOtherLength ? 'stop' : 'caution',
        message: `${quantity} ${component} (${given?.name ?? 'not in the catalogue'}) given in place of ${insteadOf} (${asked?.name ?? 'not in the catalogue'}) for ${forWhat}: ${what}. Ask the designer before it is built in.`,
        where: forWhat,
      },
    ];
  });
}

/** As it stands beside the line on the note. */
export function insteadRemark(line: GivenLine): string | null {
  if (line.insteadOf === null || line.insteadOf === line.component) return null;
  return `Given in place of ${line.insteadOf}: ask the designer`;
}

/** What of a list was neither given as listed nor in place of it. */
export function notGiven(wanted: readonly Wanted[], given: readonly GivenLine[]): Wanted[] {
  return wanted.flatMap(({ component, quantity }) => {
    const came = given
      .filter((line) => (line.insteadOf ?? line.component) === component)
      .reduce((sum, line) => sum + line.quantity, 0);
    return came < quantity ? [{ component, quantity: quantity - came }] : [];
  });
}
