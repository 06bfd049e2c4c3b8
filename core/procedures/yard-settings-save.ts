// Sets what a yard can set, as a whole; the answer says what it was before, so that it can be put back.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { yardSettings } from '../yard/yard-settings.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const yardSettingsSave = command({
  name: 'yard.settings.save',
  input: z.strictObject({ commandId, settings: yardSettings }),
  output: z.strictObject({ before: yardSettings }),
  run: async (book, { settings }) => {
    const known = new Set((await book.components()).map((each) => each.code));
    for (const field of ['classes', 'bundleSizes'] as const) {
      const unknown = Object.keys(settings[field]).find((code) => !known.has(code));
      if (unknown !== undefined)
        return refuse('unknown-component', `There is no component ${unknown} in this book.`, {
          field: `settings.${field}`,
          hint: 'Maybe it is spelt in another way.',
        });
    }
    const before = await book.yardSettings();
    await book.putYardSettings(settings);
    return answer({ before });
  },
});
