// What is found of what else was entered of a pour: a hold, and the storey below that carries it.
import { nextShiftStart } from '../calendar.ts';
import { instantText, msOf } from '../local-time.ts';
import { movePour } from '../move-pour.ts';
import type { PourFinding } from '../pour-findings.ts';
import { pourTimes } from '../pour-times.ts';
import type { Job, Pour } from '../pours.ts';

export interface EnteredOfPour {
  readonly hold: { readonly reason: string; readonly who: string; readonly until: string | null } | null;
  readonly standsOn: { readonly pour: string; readonly strengthH: number } | null;
}

/** @param isBracket whether a component carries a form: of a kind that anchors or brackets have in the catalogue */
export function enteredFindings(
  job: Job,
  pour: Pour,
  others: readonly Pour[],
  entered: EnteredOfPour | undefined,
  isBracket: (component: string) => boolean,
): readonly PourFinding[] {
  if (entered === undefined) return [];
  const { hold, standsOn } = entered;
  return [
    ...(hold === null ? [] : [holdFinding(job, pour, hold)]),
    ...(standsOn === null ? [] : standsOnFindings(job, pour, others, standsOn)),
    ...(standsOn === null || pour.loose.some(({ component }) => isBracket(component))
      ? []
      : [noBrackets(pour, standsOn.pour)]),
  ];
}

function holdFinding(job: Job, pour: Pour, hold: NonNullable<EnteredOfPour['hold']>): PourFinding {
  const until =
    hold.until === null
      ? 'to the end of the plan, as nobody knows until when'
      : `until ${instantText(msOf(hold.until), job.timeZone)}`;
  const who = hold.who === '' ? '' : `, ${hold.who}`;
  return {
    rule: 'on-hold',
    severity: 'caution',
    message: `${pour.code} is on hold (${hold.reason}${who}): its set keeps standing ${until}.`,
    where: pour.code,
  };
}

function standsOnFindings(
  job: Job,
  pour: Pour,
  others: readonly Pour[],
  { pour: below, strengthH }: NonNullable<EnteredOfPour['standsOn']>,
): readonly PourFinding[] {
  const carrying = others.find(({ code }) => code === below);
  if (carrying === undefined)
    return [
      {
        rule: 'stands-on',
        severity: 'caution',
        message: `${pour.code} stands on ${below}, which has no date: when it is strong enough is not known.`,
        where: pour.code,
      },
    ];
  const strongAt = msOf(carrying.finishAt) + strengthH * 3_600_000;
  const firstSet = (of: Pour): number => Math.min(...pourTimes(of, job).sides.map(({ setFrom }) => setFrom));
  if (firstSet(pour) >= strongAt) return [];
  const text = (ms: number): string => instantText(ms, job.timeZone);
  const days = Array.from({ length: 60 }, (_, index) => index + 1);
  const least = days.find((count) => firstSet(movePour(pour, count, job)) >= strongAt);
  const way =
    least === undefined
      ? `From ${text(nextShiftStart(strongAt, job.shifts))} on it would do.`
      : `${least === 1 ? 'One working day' : `${least} working days`} later would do.`;
  return [
    {
      rule: 'stands-on',
      severity: 'stop',
      message: `${pour.code} is set from ${text(firstSet(pour))} on ${below}, which is strong enough for it at ${text(strongAt)}, ${strengthH} h after its finish. ${way}`,
      where: pour.code,
    },
  ];
}

function noBrackets(pour: Pour, below: string): PourFinding {
  return {
    rule: 'stands-on-brackets',
    severity: 'caution',
    message: `${pour.code} stands on ${below}, but no brackets are among its loose pieces: what carries it is not counted.`,
    where: pour.code,
  };
}
