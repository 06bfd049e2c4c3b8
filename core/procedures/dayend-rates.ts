// Labour by step from the reports of days, beside the rate that the job's planning is set to. The own record can take
// the place of a rate; nothing does so by itself.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { type OwnRate, ownRates } from '../plan/day-end/own-rates.ts';
import { msOf } from '../plan/local-time.ts';
import { firstPlanningSettings, type LabourRate, labourRate } from '../plan/planning-settings.ts';
import { reportedKinds } from '../plan/steps.ts';
import { areaM2 } from '../units/area.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const dayendRates = query({
  name: 'dayend.rates',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    rates: z.array(
      z.strictObject({
        step: z.enum(reportedKinds),
        /** Steps that were reported with times and people. */
        records: z.int(),
        personHours: z.number(),
        /** Contact face of their gangs, and how many gangs. */
        areaM2: z.number(),
        gangs: z.int(),
        perM2: z.number().nullable(),
        perFt2: z.number().nullable(),
        perGang: z.number().nullable(),
        /** The job's rates for this step as they are set. */
        inSettings: z.array(labourRate),
        /** What the own record would set; null where there is nothing to divide by. */
        offered: labourRate.nullable(),
      }),
    ),
  }),
  run: async (book, { job: asked }) => {
    const job = await book.job(asked);
    if (job === null) return unknownJob(asked);
    const [reports, settings] = await Promise.all([
      book.jobEntries(asked, 'day-report'),
      book.jobEntries(asked, 'settings'),
    ]);
    const { labourRates } = settings[0]?.entry ?? firstPlanningSettings;
    return answer({
      rates: ownRates(reports, msOf).map((rate) => ({
        step: rate.step,
        records: rate.records,
        personHours: rate.personHours,
        areaM2: areaM2(rate.areaNm2),
        gangs: rate.gangs,
        perM2: rate.perM2,
        perFt2: rate.perFt2,
        perGang: rate.perGang,
        inSettings: labourRates.filter(({ step }) => step === rate.step),
        offered: offered(rate, job.units, job.code),
      })),
    });
  },
});

/** To the ten-thousandth of an hour: finer than anybody measures it. */
function offered(rate: OwnRate, units: 'us' | 'metric', job: string): LabourRate | null {
  const unit = rate.usually === 'gang' ? 'h/gang' : units === 'us' ? 'h/ft2' : 'h/m2';
  const hours = unit === 'h/gang' ? rate.perGang : unit === 'h/ft2' ? rate.perFt2 : rate.perM2;
  if (hours === null || hours > 1000) return null;
  const count = rate.records === 1 ? '1 step' : `${rate.records} steps`;
  return {
    step: rate.step,
    unit,
    personHours: Math.round(hours * 10_000) / 10_000,
    owner: `own record of ${job}`,
    source: `${count} reported with times and people`,
  };
}
