// What planning settings must not be: two rates of one step, two pads of one code, hours of a crane without any.
import { refuse, type Refusal } from '../../answer.ts';
import type { PlanningSettings } from '../planning-settings.ts';
import { minuteOfDay } from '../shifts.ts';

export function checkPlanningSettings({ labourRates, cranes, pads }: PlanningSettings): Refusal | undefined {
  for (const [index, { step, owner }] of labourRates.entries()) {
    const other = labourRates.slice(0, index).find((each) => each.step === step);
    if (other !== undefined)
      return refuse(
        'rate-twice',
        `The step ${step} has two rates, of ${other.owner} and of ${owner}: only one can count.`,
        { field: `settings.labourRates[${index}].step`, hint: 'Maybe the other one is to be taken out.' },
      ).error;
  }
  for (const [index, { crane, start, end, days }] of cranes.entries()) {
    if (minuteOfDay(start) >= minuteOfDay(end))
      return refuse(
        'crane-without-hours',
        `Crane ${crane} does not work from ${start} to ${end}: the end is not after the start.`,
        {
          field: `settings.cranes[${index}].end`,
          hint: 'Maybe start and end are exchanged.',
        },
      ).error;
    if (days.length === 0)
      return refuse(
        'crane-without-days',
        `Crane ${crane} works from ${start} to ${end} on no day of the week.`,
        {
          field: `settings.cranes[${index}].days`,
          hint: 'Maybe Mon-Fri is meant.',
        },
      ).error;
  }
  for (const [index, { code }] of pads.entries()) {
    if (pads.slice(0, index).some((each) => each.code === code))
      return refuse('pad-twice', `There are two pads ${code}.`, {
        field: `settings.pads[${index}].code`,
        hint: 'Maybe the places of both are to be one number.',
      }).error;
  }
  return undefined;
}
