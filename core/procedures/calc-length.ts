// `regang calc length`: reads a length as people type it and prints it both ways.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { lengthInput } from '../catalogue/rules-input.ts';
import { formatLengthMetric, formatLengthUs, lengthMm, parseLength } from '../units/length.ts';
import { calculation } from './procedure.ts';

export const calcLength = calculation({
  name: 'length',
  input: z.strictObject({ text: lengthInput }),
  output: z.strictObject({ nanometres: z.int(), mm: z.number(), us: z.string(), metric: z.string() }),
  run: ({ text }) => {
    const read = parseLength(text);
    if (!read.ok) return { ok: false, error: { ...read.error, field: 'text' } };
    const nanometres = read.value;
    return answer({
      nanometres,
      mm: lengthMm(nanometres),
      us: formatLengthUs(nanometres),
      metric: formatLengthMetric(nanometres),
    });
  },
});
