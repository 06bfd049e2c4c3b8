// What is doubtful about the meeting edges and the braces of a pour.
import { formatLengthMetric } from '../units/length.ts';
import { type MeetingAtPour, meetingLocks, type PourDesign } from './meeting-locks.ts';
import type { PourFinding } from './pour-findings.ts';
import type { Pour, SideName } from './pours.ts';

/**
 * Too few loose locks for the meeting edges, or more where every loose line of them is there for gangs alone: locks
 * at corners and stop-ends are entered too and are not counted here. Gaps wider than any lock spans.
 */
export function meetingFindings(pour: Pour, designs: ReadonlyMap<string, PourDesign>): PourFinding[] {
  const { meetings, locks } = meetingLocks(pour, designs);
  const found: PourFinding[] = meetings.flatMap((meeting) =>
    meeting.findings.map(({ rule, severity, message }) => ({
      rule,
      severity,
      message: `${meeting.between.join(' and ')}: ${message}`,
      where: placeOf(pour, meeting),
    })),
  );
  for (const [component, needed] of Object.entries(locks)) {
    const lines = pour.loose.filter((line) => line.component === component);
    const loose = lines.reduce((sum, line) => sum + line.quantity, 0);
    const forGangs = lines.length > 0 && lines.every(({ purpose }) => /\bbetween gangs\b/iu.test(purpose));
    if (loose === needed || (loose > needed && !forGangs)) continue;
    found.push({
      rule: 'meeting-locks',
      severity: 'caution',
      message: `The edges where gangs meet take ${needed} ${component}, the loose pieces of the pour hold ${loose}.`,
      where: pour.code,
    });
  }
  return found;
}

function placeOf(pour: Pour, { side, atNm }: MeetingAtPour): string {
  return `${pour.code}, side ${side}, ${formatLengthMetric(atNm)} along`;
}

/** By the tables a wall is braced on one side, or on both: held against the gangs that have braces. */
export function braceFindings(pour: Pour, designs: ReadonlyMap<string, PourDesign>): PourFinding[] {
  const sides = pour.sides.flatMap(({ side, gangs }) => {
    const known = gangs.flatMap(({ design }) => designs.get(design) ?? []);
    const tables = known.flatMap(({ rules }) => rules?.braces ?? []);
    return tables.length === 0
      ? []
      : [{ side, wanted: tables[0]?.sides ?? 'one', braced: known.some(isBraced) }];
  });
  const [first] = sides;
  if (first === undefined) return [];
  const braced = sides.filter((each) => each.braced).map((each) => each.side);
  const without = sides.filter((each) => !each.braced).map((each) => each.side);
  const message = braceMessage(first.wanted, braced, without);
  if (message === undefined) return [];
  return [{ rule: 'braced-sides', severity: 'caution', message, where: pour.code }];
}

function isBraced({ rules, braced = true }: PourDesign): boolean {
  return rules?.braces !== undefined && braced;
}

function braceMessage(
  wanted: 'one' | 'both',
  braced: readonly SideName[],
  without: readonly SideName[],
): string | undefined {
  if (wanted === 'both')
    return without.length === 0
      ? undefined
      : `Both sides are to be braced, and no gang of side ${without.join(' and ')} is.`;
  if (braced.length === 1) return undefined;
  return braced.length === 0
    ? 'One side is to be braced, and no gang of this pour is.'
    : 'One side is to be braced, and gangs of both sides are: their braces are counted twice.';
}
