// Questions of the yard's ledger on the demo job: the yard by component, histories of a number, and pages of the
// ledger under its filters.
import { expect } from 'vitest';
import { job, type DemoHost } from './demo-host.ts';

function at(step: { readonly from: string }): number {
  return Date.parse(step.from);
}

export async function askOfLedger({ ask, refused }: Pick<DemoHost, 'ask' | 'refused'>): Promise<void> {
  const { rows, from, to } = await ask('yard.summary', { job });
  expect(Date.parse(to ?? '') - Date.parse(from ?? '')).toBe(14 * 86_400_000);
  const quantities = await ask('yard.quantities', {});
  const held = (component: string): number =>
    quantities.rows.filter((row) => row.component === component).reduce((sum, row) => sum + row.quantity, 0);
  expect(rows.length).toBeGreaterThan(30);
  for (const row of rows) {
    const { ready, toClean, toRepair, quarantine, scrapped, away, notOurs } = row;
    expect([row.component, ready + toClean + toRepair + quarantine + scrapped + away + notOurs]).toEqual([
      row.component,
      held(row.component),
    ]);
    expect(row.below).toBe(Math.max(0, (row.need ?? 0) - ready));
  }
  // What the plan holds at its peak is on the curve that the board draws.
  const { held: curve } = await ask('curve.read', { job, component: 'LK' });
  const first = curve.findLastIndex((step) => at(step) <= Date.parse(from ?? ''));
  const within = curve.slice(Math.max(0, first)).filter((step) => at(step) < Date.parse(to ?? ''));
  expect(within.length).toBeGreaterThan(1);
  const most = Math.max(...within.map((step) => step.quantity));
  expect(rows.find((row) => row.component === 'LK')?.need).toBe(most);
  expect((await ask('yard.summary', {})).rows.every((row) => row.need === null)).toBe(true);
  expect(await refused('yard.summary', { job: 'NONE' })).toBe('unknown-job');

  const [line] = quantities.rows.filter((row) => row.component === 'LK' && row.condition === 'ready');
  if (line === undefined) throw new Error('The demo has no ready locks.');
  const { component, owner, location, condition } = line;
  const history = await ask('yard.movements', { historyOf: { component, owner, location, condition } });
  expect(history.rows[0]?.quantityAfter).toBe(line.quantity);
  expect(history.rows.reduce((sum, row) => sum + (row.change ?? 0), 0)).toBe(line.quantity);
  expect(await refused('yard.movements', { historyOf: { component }, reason: 'lost' })).toBe('two-questions');
  const openings = await ask('yard.movements', { reason: 'opening', component: 'LK' });
  expect(openings.rows.length).toBeGreaterThan(0);
  for (const row of openings.rows)
    expect([row.reason, row.component, row.change]).toEqual(['opening', 'LK', null]);
}
