// What is doubtful about a pour as entered: it can be stored, and the plan is made with it, but somebody
// should look. A limit that is passed is never rounded away.
import { never } from '../answer.ts';
import { inShift } from './calendar.ts';
import { instantText, localDate } from './local-time.ts';
import { boxFindings } from './closed-boxes.ts';
import { braceFindings, meetingFindings } from './meeting-findings.ts';
import type { PourDesign } from './meeting-locks.ts';
import { oppositeHoles, type HoledDesign } from './opposite-holes.ts';
import { closingSide, pourTimes, setFromOf, type PourTimes } from './pour-times.ts';
import type { Gate, Job, Pour, PourSide } from './pours.ts';

export interface PourFinding {
  readonly rule: string;
  readonly severity: 'stop' | 'caution' | 'note';
  readonly message: string;
  readonly where: string;
}

export function pourFindings(
  job: Job,
  pour: Pour,
  others: readonly Pour[],
  designs: ReadonlyMap<string, PourDesign>,
): PourFinding[] {
  const times = pourTimes(pour, job);
  return [
    ...settingFindings(job, pour, times),
    ...pour.sides.flatMap((side) => overlapFindings(pour, side, designs)),
    ...sequenceFindings(job, pour, times, others),
    ...pour.gates.filter((gate) => !gate.done).flatMap((gate) => gateFindings(job, pour, times, gate)),
    ...meetingFindings(pour, designs),
    ...braceFindings(pour, designs),
    ...boxFindings(pour, designs),
    ...tieFindings(pour, designs),
  ];
}

function settingFindings(job: Job, pour: Pour, times: PourTimes): PourFinding[] {
  const found: PourFinding[] = [];
  const text = (ms: number): string => instantText(ms, job.timeZone);
  for (const side of times.sides) {
    const where = `${pour.code}, side ${side.side}`;
    if (side.setTo > times.finish)
      found.push({
        rule: 'set-before-pour',
        severity: 'stop',
        message: `Setting side ${side.side} takes until ${text(side.setTo)}, after the pour's finish at ${text(times.finish)}.`,
        where,
      });
    if (!inShift(side.setFrom, job.shifts))
      found.push({
        rule: 'set-in-shift',
        severity: 'caution',
        message: `Setting side ${side.side} begins at ${text(side.setFrom)}, outside the shift.`,
        where,
      });
  }
  const [a, b] = [times.sides[0], times.sides[1]];
  if (pour.order === 'face-first' && a !== undefined && b !== undefined && b.setFrom < a.setTo)
    found.push({
      rule: 'close-after-set',
      severity: 'caution',
      message: `Side B closes from ${text(b.setFrom)}, while side A is still being set until ${text(a.setTo)}.`,
      where: pour.code,
    });
  return found;
}

function overlapFindings(
  pour: Pour,
  side: PourSide,
  designs: ReadonlyMap<string, HoledDesign>,
): PourFinding[] {
  const found: PourFinding[] = [];
  const placed = [...side.gangs].sort((p, q) => p.atNm - q.atNm);
  for (const [index, gang] of placed.entries()) {
    const next = placed[index + 1];
    const width = designs.get(gang.design)?.widthNm ?? 0;
    if (next !== undefined && gang.atNm + width > next.atNm)
      found.push({
        rule: 'gangs-overlap',
        severity: 'stop',
        message: `Gangs ${gang.design} and ${next.design} of side ${side.side} stand in each other's place.`,
        where: `${pour.code}, side ${side.side}`,
      });
  }
  return found;
}

function sequenceFindings(job: Job, pour: Pour, times: PourTimes, others: readonly Pour[]): PourFinding[] {
  const found: PourFinding[] = [];
  for (const code of pour.after) {
    const before = others.find((each) => each.code === code);
    if (before === undefined) continue;
    const finish = pourTimes(before, job).finish;
    if (times.finish <= finish)
      found.push({
        rule: 'sequence',
        severity: 'stop',
        message: `${pour.code} is poured at ${instantText(times.finish, job.timeZone)}, not after ${code} at ${instantText(finish, job.timeZone)}.`,
        where: pour.code,
      });
  }
  return found;
}

function gateFindings(job: Job, pour: Pour, times: PourTimes, gate: Gate): PourFinding[] {
  const needed = localDate(gateNeededBy(times, gate), job.timeZone);
  if (gate.promised <= needed) return [];
  return [
    {
      rule: 'gate-late',
      severity: 'caution',
      message: `${gate.name} (${gate.who}) is promised for ${gate.promised}, needed by ${needed}.`,
      where: pour.code,
    },
  ];
}

/** The instant of the step that a gate stands before. */
export function gateNeededBy(times: PourTimes, gate: Gate): number {
  switch (gate.before) {
    case 'set':
      return Math.min(...times.sides.map((side) => side.setFrom));
    case 'close':
      return setFromOf(times, closingSide(times));
    case 'pour':
      return times.finish;
    default:
      return never(gate.before);
  }
}

function tieFindings(pour: Pour, designs: ReadonlyMap<string, HoledDesign>): PourFinding[] {
  if (pour.tieComponent === null) return [];
  const { alone, firstAlone } = oppositeHoles(pour, designs);
  if (firstAlone === null) return [];
  return [
    {
      rule: 'ties-through',
      severity: 'caution',
      message: `${alone.A} tie holes of side A and ${alone.B} of side B have no hole opposite; the first is on side ${firstAlone.side}.`,
      where: `${pour.code}, ${firstAlone.alongNm / 1_000_000} mm along, ${firstAlone.heightNm / 1_000_000} mm up`,
    },
  ];
}
