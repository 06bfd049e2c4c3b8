// Adds a crane or replaces one by its code, with its chart. Radii must rise; a chart that carries more farther out
// is kept and said.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { checkChart } from '../pick/crane-chart.ts';
import { crane } from '../pick/setup.ts';
import { command } from './procedure.ts';
import { commandId, finding } from './shapes.ts';

export const craneSave = command({
  name: 'crane.save',
  input: z.strictObject({ commandId, crane }),
  output: z.strictObject({ code: z.string(), findings: z.array(finding) }),
  run: async (book, { crane: entered }) => {
    const chart = checkChart(entered.chart, (row) => `crane.chart[${row}].radius`);
    if (!chart.ok) return chart;
    if (entered.cautionPercent > entered.stopPercent)
      return refuse(
        'crane-percent',
        `${entered.code} is to caution from ${entered.cautionPercent} % and to stop from ${entered.stopPercent} % on.`,
        { field: 'crane.cautionPercent', hint: 'Maybe the two are exchanged.' },
      );
    await book.putCrane(entered);
    return answer({ code: entered.code, findings: [...chart.value] });
  },
});
