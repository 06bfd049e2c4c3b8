// A book with the demo job in which somebody has entered a crane and how two of its gangs are picked: one that
// passes with a caution, one that the crane refuses.
import path from 'node:path';
import { openBookFile } from '../../core/host/open-book-file.ts';
import type { Crane, PickSetup } from '../../core/pick/setup.ts';
import { answer } from '../../core/answer.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';

const footNm = 304_800_000;
const context = { at: '2026-02-23T07:00:00-05:00', who: 'tester' };

export const crane: Crane = {
  code: 'TC1',
  name: 'Crane 1',
  chart: [
    { radiusNm: 30 * footNm, capacityGrams: 3_000_000 },
    { radiusNm: 60 * footNm, capacityGrams: 1_500_000 },
    { radiusNm: 90 * footNm, capacityGrams: 950_000 },
    { radiusNm: 120 * footNm, capacityGrams: 640_000 },
  ],
  deductGrams: 90_000,
  cautionPercent: 75,
  stopPercent: 90,
  windLimitMps: 9.8,
  windWhose: 'the crane maker',
};

export const setup: PickSetup = {
  rigging: { by: 'angle', angleDeg: 60 },
  slingsGrams: 20_000,
  equalisingGear: null,
  concreteLeftOn: 0.05,
  pickedUpFrom: 'flat',
  crane: 'TC1',
  pickUpRadiusNm: 40 * footNm,
  setRadiusNm: 85 * footNm,
  windMps: 6,
  windSource: 'the forecast of the morning',
};

/** Its file. GC passes with a caution; GA is refused at the end of the chart. */
export async function pickedBook(folder: string): Promise<string> {
  const file = path.join(folder, 'picked.regang');
  const made = await makeDemo(file, context);
  if (!made.ok) throw new Error(made.error.message);
  const opened = await openBookFile(file, 'open', context.at);
  if (!opened.ok) throw new Error(opened.error.message);
  const meta = { commandId: 'picks-for-tests', name: 'test', ...context };
  await opened.value.command(meta, async (book) => {
    await book.putCrane(crane);
    await book.putPickSetup('GC', setup);
    await book.putPickSetup('GA', { ...setup, setRadiusNm: 118 * footNm });
    return answer({});
  });
  await opened.value.close();
  return file;
}
