// What is set for the yard: counts, cleaning, when a figure is old, spares.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { firstYardSettings, yardSettings } from '../yard/yard-settings.ts';
import { query } from './procedure.ts';

export const yardSettingsRead = query({
  name: 'yard.settings.read',
  input: z.strictObject({}),
  output: z.strictObject({
    settings: yardSettings,
    /** What the app begins with: a figure that is still the same has no source. */
    first: yardSettings,
  }),
  run: async (book) => answer({ settings: await book.yardSettings(), first: firstYardSettings }),
});
