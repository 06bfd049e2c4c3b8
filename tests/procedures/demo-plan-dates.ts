// The questions about dates, each asked once of the demo job: a pour loses its date, gets three to choose from, is placed.
import { expect } from 'vitest';
import { job, type DemoHost } from './demo-host.ts';

export async function askOfDates(ask: DemoHost['ask']): Promise<void> {
  await ask('pour.open', { commandId: 'demo-dates-1', job, pour: 'P26', open: true });
  const { dates, dateOpen } = await ask('pour.dates', { job, pour: 'P26' });
  expect(dateOpen).toBe(true);
  expect(dates).toHaveLength(3);
  const { placed } = await ask('pour.place', { job, pours: ['P26'] });
  expect(placed.map(({ pour }) => pour)).toEqual(['P26']);
  await ask('pour.open', { commandId: 'demo-dates-2', job, pour: 'P26', open: false });
}
