// What is put into the book comes out equal, after closing and opening it too.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { BookReader, BookWriter, Design } from '../../core/book/book.ts';
import type { Crane, PickSetup } from '../../core/pick/setup.ts';
import type { Job, Pour } from '../../core/plan/pours.ts';
import { reversalOf } from '../../core/yard/movement.ts';
import { aFolder, aYard, component, done, now, opened, openingFigure, movement, run } from './a-book.ts';

const job: Job = {
  code: 'J1',
  name: 'Invented works',
  timeZone: 'America/New_York',
  currency: 'USD',
  units: 'us',
  planFrom: '2026-03-02',
  shifts: {
    timeZone: 'America/New_York',
    days: [1, 2, 3, 4, 5],
    start: '07:00',
    end: '15:30',
    off: ['2026-04-03'],
  },
  crew: 4,
  labourPerHCents: 6150,
  flyOnH: 2,
  regangBaseH: 1.5,
  cleanH: 24,
};

const design: Design = {
  code: 'G1',
  name: 'Long wall',
  system: 'S',
  revision: 'B',
  hand: 'left',
  geometry: {
    panels: [{ panel: 'P1', xNm: 0, yNm: 0, onSide: false }],
    fillers: [{ xNm: 914_400_000, yNm: 0, widthNm: 396_875, heightNm: 2_743_200_000 }],
    edges: { left: 'open', right: 'next-gang' },
    equalised: false,
    face: { widthNm: 1, heightNm: 2_743_200_000 },
  },
  assembleH: 6.25,
  breakDownH: 3,
};

const pour = (code: string, more: Partial<Pour> = {}): Pour => ({
  code,
  name: `Pour ${code}`,
  element: 'wall',
  order: 'face-first',
  sides: [
    {
      side: 'A',
      setAt: '2026-03-03T07:00:00-05:00',
      setH: 4,
      gangs: [
        { design: 'G1', atNm: -5 },
        { design: 'G1', atNm: 0 },
      ],
    },
    { side: 'B', setAt: '2026-03-05T07:00:00-05:00', setH: 3.5, gangs: [] },
  ],
  finishAt: '2026-03-06T14:00:00-05:00',
  stripMinimumH: 36,
  stripH: 2,
  after: [],
  gates: [
    { name: 'Steel', who: 'Fixers', before: 'close', promised: '2026-03-04', done: true },
    { name: 'Inspection', who: 'Engineer', before: 'pour', promised: '2026-03-06', done: false },
  ],
  loose: [
    { side: 'both', component: 'P2', quantity: 12, purpose: 'locks between gangs' },
    { side: 'A', component: 'P1', quantity: 1, purpose: 'stop-end' },
  ],
  tieComponent: 'P2',
  ...more,
});

async function throughTheBook<T>(
  write: (writer: BookWriter) => Promise<unknown>,
  read: (reader: BookReader) => Promise<T>,
): Promise<T> {
  const file = path.join(aFolder(), 'a.regang');
  const book = await aYard(file);
  await done(book, write);
  await book.close();
  return (await opened(file)).read(read);
}

describe('Put, closed, opened and read, equal', () => {
  test('are components with all their facts and with none', async () => {
    const full = component('FULL', {
      kind: 'panel',
      widthNm: 609_600_000,
      heightNm: 2_743_200_000,
      lengthNm: 1,
      crossMembersNm: [0, 914_400_000],
      tieHolesNm: [
        [1, 2],
        [3, 4],
      ],
      system: 'S',
      hirePerDayCents: 0,
      regangPerPieceH: 0.125,
      remark: 'bent',
      pressurePa: 60_000,
      pressureOnSidePa: 45_000,
      canShrink: true,
    });
    const changed = component('P1', { name: 'Changed' });
    const read = await throughTheBook(
      async (writer) => {
        await writer.putComponent(full);
        await writer.putComponent(changed);
      },
      (reader) => reader.components(),
    );
    expect(read).toEqual([full, changed, component('P2')]);
  });

  test('are rule tables, each change the next version and the old one still there', async () => {
    const first = { ties: { holes: true } };
    const second = { ties: { holes: false }, sources: { ties: 'an invented sheet' } };
    const read = await throughTheBook(
      async (writer) => {
        await writer.putRules('S', 'System', first);
        expect(await writer.putRules('S', 'System S', second)).toMatchObject({ version: 2 });
        await writer.putRules('T', 'Other', {});
      },
      (reader) => reader.ruleVersions(),
    );
    expect(read).toEqual([
      { system: 'S', systemName: 'System', version: 1, rules: first },
      { system: 'S', systemName: 'System S', version: 2, rules: second },
      { system: 'T', systemName: 'Other', version: 1, rules: {} },
    ]);
  });

  test('are designs, jobs and plans', async () => {
    const plan = { id: 'plan-1', job: 'J1', madeAt: now, input: { seed: 1 }, answer: { runs: [] } };
    const read = await throughTheBook(
      async (writer) => {
        await writer.putDesign(design);
        await writer.putJob({ ...job, name: 'Before' });
        await writer.putJob(job);
        await writer.putPlan(plan);
        await writer.putPlan({ ...plan, id: 'plan-2' });
      },
      async (reader) => [
        await reader.designs(),
        await reader.jobs(),
        await reader.job('J1'),
        await reader.latestPlan('J1'),
      ],
    );
    expect(read).toEqual([[design], [job], job, { ...plan, id: 'plan-2' }]);
    const none = await throughTheBook(
      () => Promise.resolve(),
      async (reader) => [await reader.job('J1'), await reader.latestPlan('J1'), await reader.pours('J1')],
    );
    expect(none).toEqual([null, null, []]);
  });

  test('are the saved states of a design: one for each change, none for the same again, also after it is taken out', async () => {
    const changed = { ...design, revision: 'C', geometry: { ...design.geometry, braced: false } };
    const renamed = { ...changed, name: 'Long wall, other hand', hand: 'right' as const };
    const numbers: number[] = [];
    const read = await throughTheBook(
      async (writer) => {
        await writer.putRules('S', 'System', {});
        for (const state of [design, design, changed]) numbers.push(await writer.putDesign(state));
        await writer.putRules('S', 'System', { ties: { holes: true } });
        // The same again under newer rule tables is no new state of the design.
        numbers.push(await writer.putDesign(changed));
        await writer.removeDesign('G1');
        numbers.push(await writer.putDesign(renamed));
        await writer.removeDesign('G1');
      },
      async (reader) => [await reader.designRevisions('G1'), await reader.designs(), await reader.check()],
    );
    const saved = { savedAt: now, who: 'tester' };
    expect(numbers).toEqual([1, 1, 2, 2, 3]);
    expect(read).toEqual([
      [
        { ...design, number: 1, ruleVersion: 1, ...saved },
        { ...changed, number: 2, ruleVersion: 1, ...saved },
        { ...renamed, number: 3, ruleVersion: 2, ...saved },
      ],
      [],
      [],
    ]);
  });

  test('are cranes and how gangs are picked; of a design taken out nothing is left of the pick', async () => {
    const crane: Crane = {
      code: 'K1',
      name: 'Invented crane',
      chart: [
        { radiusNm: 10_000_000_000, capacityGrams: 5_000_000 },
        { radiusNm: 20_000_000_000, capacityGrams: 2_000_000 },
      ],
      deductGrams: 300_000,
      cautionPercent: 75,
      stopPercent: 90,
      windLimitMps: null,
      windWhose: '',
    };
    const setup: PickSetup = {
      rigging: { by: 'legs', legLengthNm: 3_000_000_000 },
      slingsGrams: 20_000,
      equalisingGear: { name: 'Beam', weightGrams: 95_000 },
      concreteLeftOn: 0.05,
      pickedUpFrom: 'flat',
      crane: 'K1',
      pickUpRadiusNm: 12_000_000_000,
      setRadiusNm: null,
      windMps: 6.5,
      windSource: 'the forecast',
    };
    const angled: PickSetup = { ...setup, rigging: { by: 'angle', angleDeg: 60 }, equalisingGear: null };
    const read = await throughTheBook(
      async (writer) => {
        await writer.putCrane({ ...crane, windLimitMps: 9 });
        await writer.putCrane(crane);
        await writer.putDesign(design);
        await writer.putDesign({ ...design, code: 'G2' });
        await writer.putPickSetup('G1', setup);
        await writer.putPickSetup('G1', angled);
        await writer.putPickSetup('G2', setup);
        await writer.removeDesign('G2');
      },
      async (reader) => [
        await reader.cranes(),
        await reader.pickSetup('G1'),
        await reader.pickSetup('G2'),
        await reader.pickSetup('G3'),
      ],
    );
    expect(read).toEqual([[crane], angled, null, null]);
  });

  test('are pours in the order in which they were entered, whatever their codes and predecessors', async () => {
    const read = await throughTheBook(
      async (writer) => {
        await writer.putDesign(design);
        await writer.putJob(job);
        // Its predecessor is entered after it: only at the end must both be there.
        await writer.putPour('J1', pour('14', { after: ['3', '1'] }));
        await writer.putPour('J1', pour('3'));
        await writer.putPour('J1', pour('1', { tieComponent: null, gates: [], loose: [] }));
        await writer.putPour('J1', pour('3', { name: 'Changed', order: 'steel-first' }));
      },
      (reader) => reader.pours('J1'),
    );
    expect(read).toEqual([
      pour('14', { after: ['3', '1'] }),
      pour('3', { name: 'Changed', order: 'steel-first' }),
      pour('1', { tieComponent: null, gates: [], loose: [] }),
    ]);
  });

  test('are movements, with the one that took them back', async () => {
    const first = openingFigure({
      id: 'first',
      noteNumber: 'N-1',
      remark: 'in the rain',
      at: '2026-03-01T07:00:00.5+05:30',
    });
    const second = movement({ id: 'second', conditionAfter: 'to-clean', reason: 'transfer' });
    const read = await throughTheBook(
      (writer) => writer.appendMovements([first, second], now),
      async (reader) => [
        await reader.movement('first'),
        await reader.movement('none'),
        await reader.movements({ limit: 1 }),
      ],
    );
    const booked = { recordedAt: now, reversedBy: null };
    expect(read).toEqual([{ ...first, number: 1, ...booked }, null, [{ ...second, number: 2, ...booked }]]);
  });
});

describe('Removing a pour', () => {
  test('takes everything of it out; one that others come after is refused with their names', async () => {
    const book = await aYard(path.join(aFolder(), 'a.regang'));
    await done(book, async (writer) => {
      await writer.putDesign(design);
      await writer.putJob(job);
      await writer.putPour('J1', pour('1'));
      await writer.putPour('J1', pour('2', { after: ['1'] }));
    });
    const remove = (code: string): ReturnType<typeof run<null>> =>
      run(book, async (writer) => {
        await writer.removePour('J1', code);
        return { ok: true, value: null };
      });
    const refused = await remove('1');
    expect(refused).toMatchObject({ ok: false, error: { code: 'pour-has-followers' } });
    expect(JSON.stringify(refused)).toContain('2 must be poured after it');
    expect(await remove('9')).toMatchObject({ ok: false, error: { code: 'unknown-pour' } });
    expect((await remove('2')).ok).toBe(true);
    expect((await remove('1')).ok).toBe(true);
    expect(await book.read((reader) => reader.pours('J1'))).toEqual([]);
    expect(await book.read((reader) => reader.check())).toEqual([]);
  });
});

test('Movements are found by component, location and owner, newest first, page after page', async () => {
  const book = await aYard(path.join(aFolder(), 'a.regang'));
  await done(book, async (writer) => {
    const into = ['NORTH', 'SOUTH', 'NORTH', 'SITE'];
    const figures = into.map((to, index) =>
      openingFigure({
        id: `m${index + 1}`,
        to,
        component: index === 2 ? 'P2' : 'P1',
        owner: index === 1 ? 'H1' : 'OURS',
      }),
    );
    await writer.appendMovements(figures, now);
  });
  const ids = async (filter: Parameters<BookReader['movements']>[0]): Promise<string[]> =>
    (await book.read((reader) => reader.movements(filter))).map((each) => each.id);
  expect(await ids({ limit: 3 })).toEqual(['m4', 'm3', 'm2']);
  expect(await ids({ limit: 3, beforeNumber: 2 })).toEqual(['m1']);
  expect(await ids({ limit: 9, component: 'P2' })).toEqual(['m3']);
  expect(await ids({ limit: 9, location: 'NORTH' })).toEqual(['m3', 'm1']);
  expect(await ids({ limit: 9, location: 'NORTH', owner: 'OURS', component: 'P1' })).toEqual(['m1']);
});

test('Stock of a date rests on the figures that stood then: estimated before it was taken back, counted after', async () => {
  const book = await aYard(path.join(aFolder(), 'a.regang'));
  const estimated = openingFigure({ quantity: 50, basis: 'estimated', basisDate: '2026-02-15' });
  const back = reversalOf(estimated, {
    id: 'back',
    at: '2026-03-05T07:00:00-05:00',
    who: 'tester',
    remark: null,
  });
  const counted = openingFigure({ quantity: 47, at: back.at, basisDate: '2026-03-05' });
  await done(book, (writer) => writer.appendMovements([estimated, back, counted], now));
  const north = async (at?: string): Promise<unknown> => {
    const lines = await book.read((reader) => reader.stock(at));
    return lines.find((line) => line.location === 'NORTH');
  };
  expect(await north('2026-03-04T07:00:00-05:00')).toMatchObject({
    quantity: 50,
    basis: 'estimated',
    basisDate: '2026-02-15',
  });
  expect(await north('2026-03-05T11:59:59Z')).toMatchObject({ quantity: 50, basis: 'estimated' });
  expect(await north('2026-03-05T12:00:00Z')).toMatchObject({
    quantity: 47,
    basis: 'counted',
    basisDate: '2026-03-05',
  });
  expect(await north()).toMatchObject({ quantity: 47, basis: 'counted' });
});
