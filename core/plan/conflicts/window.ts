// A pour whose setting cannot be done in the time there is, wherever its set dates are put: from the last of what has to
// come first (a gate, the storey below, a pour before it) to its finish. Only the entries that clash are named.
import { workAfter, workBefore } from '../calendar.ts';
import { instantText, msOf, startOfDate } from '../local-time.ts';
import type { PourFinding } from '../pour-findings.ts';
import { closingSide, pourTimes } from '../pour-times.ts';
import type { Job, Pour } from '../pours.ts';

/** The storey below that carries a pour's brackets, and the clock hours until its concrete is strong enough. */
export interface StandsOn {
  readonly pour: string;
  readonly strengthH: number;
}

interface Before {
  readonly atMs: number;
  readonly words: string;
}

/** @param others all pours of the job; @param standsOn null where the pour stands on no other */
export function windowConflicts(
  job: Job,
  pour: Pour,
  others: readonly Pour[],
  standsOn: StandsOn | null,
): PourFinding[] {
  const close = pour.sides.find(({ side }) => side === closingSide(pourTimes(pour, job)))?.setH ?? 0;
  const clashes = [
    clash(job, pour, beforeSetting(job, pour, others, standsOn), settingWork(pour)),
    clash(job, pour, latest(gatesBefore(job, pour, 'close')), {
      hours: close,
      words: `closing takes ${close} h`,
    }),
  ];
  return clashes.flatMap((found) => found ?? []).slice(0, 1);
}

function beforeSetting(
  job: Job,
  pour: Pour,
  others: readonly Pour[],
  standsOn: StandsOn | null,
): Before | undefined {
  const below = others.find(({ code }) => code === standsOn?.pour);
  const carried: Before[] =
    below === undefined || standsOn === null
      ? []
      : [
          {
            atMs: msOf(below.finishAt) + standsOn.strengthH * 3_600_000,
            words: `${below.code} below is strong enough ${standsOn.strengthH} h after its finish`,
          },
        ];
  return latest([...gatesBefore(job, pour, 'set'), ...carried]);
}

function gatesBefore(job: Job, pour: Pour, step: 'set' | 'close'): readonly Before[] {
  return pour.gates.flatMap((gate) =>
    gate.done || gate.before !== step
      ? []
      : [
          {
            atMs: startOfDate(gate.promised, job.timeZone),
            words: `${gate.name} (${gate.who}) is promised for ${gate.promised}`,
          },
        ],
  );
}

interface WorkToDo {
  readonly hours: number;
  readonly words: string;
}

/** Steel first, both sides may be set at once; face first, the second waits for the first. */
function settingWork(pour: Pour): WorkToDo {
  const [a, b] = pour.sides;
  if (pour.order === 'steel-first') {
    const hours = Math.max(a.setH, b.setH);
    return { hours, words: `setting takes ${hours} h` };
  }
  return { hours: a.setH + b.setH, words: `setting takes ${a.setH} h and closing ${b.setH} h` };
}

function clash(
  job: Job,
  pour: Pour,
  before: Before | undefined,
  work: WorkToDo,
): readonly PourFinding[] | undefined {
  const finish = msOf(pour.finishAt);
  if (before === undefined || work.hours === 0) return undefined;
  if (workAfter(before.atMs, work.hours, job.shifts) <= finish) return undefined;
  const latestStart = instantText(workBefore(finish, work.hours, job.shifts), job.timeZone);
  return [
    {
      rule: 'window-too-short',
      severity: 'stop',
      message: `${before.words}, ${work.words} of work, and ${pour.code} finishes at ${pour.finishAt}: the work had to begin by ${latestStart}.`,
      where: pour.code,
    },
  ];
}

function latest(list: readonly Before[]): Before | undefined {
  return list.reduce<Before | undefined>(
    (last, each) => (last === undefined || each.atMs > last.atMs ? each : last),
    undefined,
  );
}
