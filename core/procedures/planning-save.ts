// Saves what a job sets for its planning, as a whole.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { checkPlanningSettings } from '../plan/work/check-settings.ts';
import { planningSettings } from '../plan/planning-settings.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownJob } from './unknown.ts';

export const planningSave = command({
  name: 'planning.save',
  input: z.strictObject({ commandId, job: code, settings: planningSettings }),
  output: z.strictObject({ settings: planningSettings }),
  run: async (book, { job, settings }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const wrong = checkPlanningSettings(settings);
    if (wrong !== undefined) return { ok: false, error: wrong };
    await book.putJobEntry({ job, kind: 'settings', id: 'settings' }, settings);
    return answer({ settings });
  },
});
