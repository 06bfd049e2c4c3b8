// The questions of pick lists, trucks and loads, each asked once of the demo job.
import { expect } from 'vitest';
import type { DemoHost } from './demo-host.ts';

const inchNm = 25_400_000;

/** Invented, as all of the demo. */
export const flatbed = {
  code: 'T1',
  name: 'Flatbed 24 ft',
  payloadGrams: 6_350_000,
  deckLengthNm: 24 * 12 * inchNm,
  deckWidthNm: 96 * inchNm,
  stackHeightNm: 72 * inchNm,
};

export async function askOfLoading(ask: DemoHost['ask']): Promise<void> {
  const list = await ask('picklist.read', { design: 'GB' });
  expect(list.id).toBe('design:GB');
  const { tree } = await ask('sheet.picklist', { id: list.id });
  expect(tree.tag).toBe('article');
  const given = await ask('picklist.given', {
    commandId: 'demo-given-1',
    pick: list.id,
    id: 'demo-note-given',
    number: 'I-1',
    from: 'ENN',
    to: 'TB',
    lines: [{ component: 'R10', owner: 'OURS', condition: 'ready', quantity: 3, insteadOf: 'R8' }],
  });
  expect(given.findings).toMatchObject([{ rule: 'given-instead', severity: 'stop' }]);
  await ask('truck.save', { commandId: 'demo-truck-1', truck: flatbed });
  const { trucks } = await ask('truck.list', {});
  expect(trucks).toContainEqual(flatbed);
  const lines = [{ component: 'P836', quantity: 20, stop: 1 }];
  const { loads } = await ask('load.propose', { lines, trucks: ['T1'] });
  const [first] = loads;
  const text = { truck: 'T1', leavesAt: null, tiedDownBy: 'Driver of the demo', remark: null };
  const load = { ...text, id: 'demo-load-1', paper: null, version: 0, stacks: first?.stacks ?? [] };
  await ask('load.save', { commandId: 'demo-load-save', load });
  expect((await ask('load.list', {})).loads.map((each) => each.load)).toContain('demo-load-1');
  expect((await ask('load.read', { load: 'demo-load-1' })).passes).toEqual([]);
  expect((await ask('sheet.loading', { id: 'demo-load-1' })).title).toBe('Loading list T1 Flatbed 24 ft');
}
