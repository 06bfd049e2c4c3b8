// What the demo's README says is to be seen, seen: one test a claim. The demo is invented; what is checked
// against the outside here is the calendar (clock change of 8 March 2026 in New York, IANA time zones).
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBook, type OpenBook } from '../../core/book/open.ts';
import { importColumns } from '../../core/exchange/kinds.ts';
import { importKinds } from '../../core/exchange/prepared.ts';
import { workBefore } from '../../core/plan/calendar.ts';
import { meetingLocks } from '../../core/plan/meeting-locks.ts';
import { oppositeHoles } from '../../core/plan/opposite-holes.ts';
import { instantText } from '../../core/plan/local-time.ts';
import { pourFindings } from '../../core/plan/pour-findings.ts';
import { formatPressure } from '../../core/units/pressure.ts';
import type { Answer } from '../../core/answer.ts';
import { rulesInForce, systemOf } from '../../core/book/systems.ts';
import { checkPick } from '../../core/pick/pick-check.ts';
import { findSplit } from '../../core/pick/split.ts';
import { designRow } from '../../core/procedures/design-row.ts';
import { importFile } from '../../core/procedures/import-file.ts';
import { pickCheck } from '../../core/procedures/pick-check.ts';
import { pickRead } from '../../core/procedures/pick-read.ts';
import { demoFiles, demoText, makeDemo } from '../../seed-demo/make-demo.ts';
import { type JobPlan, planOfBook } from './plan-of-book.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'regang-demo-'));
const file = path.join(folder, 'demo.regang');
const context = { at: '2026-02-20T16:00:00-05:00', who: 'demo' };
let book: OpenBook;
let plan: JobPlan;

async function opened(name: string, mode: 'open' | 'create'): Promise<OpenBook> {
  const made = await openBook(name, { mode, now: context.at });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

beforeAll(async () => {
  expect(await makeDemo(file, context)).toMatchObject({ ok: true, value: { job: 'TB26' } });
  book = await opened(file, 'open');
  plan = await book.read((reader) => planOfBook(reader));
});
afterAll(async () => {
  await book.close();
  rmSync(folder, { recursive: true });
});

async function valueOf<T>(asked: Answer<T> | Promise<Answer<T>>): Promise<T> {
  const answered = await asked;
  if (!answered.ok) throw new Error(answered.error.message);
  return answered.value;
}
const at = (ms: number): string => instantText(ms, 'America/New_York');
const short = (of: JobPlan, component: string) =>
  of.answer.shortfalls.filter((one) => one.component === component);
const most = (of: JobPlan, component: string, from: string, to: string): number =>
  Math.max(
    0,
    ...short(of, component)
      .filter((one) => one.from < to && one.to > from)
      .map((one) => one.quantity),
  );
const designOf = (turn: string): string | undefined =>
  plan.input.turns.find((one) => one.id === turn)?.design;
/** Every turn that follows another in its run, with the one before it. */
const follows = () =>
  plan.answer.runs.flatMap(({ turns }) =>
    turns.slice(1).map((turn, index) => ({ from: turns[index] ?? '', to: turn })),
  );

describe('The demo book', () => {
  test('holds 27 pours in eight weeks, 45 components, 13 designs and two panel systems', async () => {
    expect(plan.pours).toHaveLength(27);
    expect(plan.designs.size).toBe(13);
    const [components, rules] = await book.read((reader) =>
      Promise.all([reader.components(), reader.ruleVersions()]),
    );
    expect(components).toHaveLength(45);
    expect(rules.map((one) => one.system)).toEqual(['OMB', 'OMC']);
    const days = plan.pours.map((pour) => pour.sides[0].setAt.slice(0, 10)).sort();
    expect(days[0]).toBe('2026-03-02');
    const strips = [...plan.turns.times.values()].map((times) => at(times.stripTo).slice(0, 10)).sort();
    expect(strips.at(-1)).toBe('2026-04-24');
  });

  test('is refused over an existing file, which stays as it was', async () => {
    const other = path.join(folder, 'mine.txt');
    writeFileSync(other, 'mine');
    expect(await makeDemo(other, context)).toMatchObject({ ok: false, error: { code: 'book-exists' } });
    expect(readFileSync(other, 'utf8')).toBe('mine');
    expect(readdirSync(folder).filter((name) => name.includes('being-made'))).toEqual([]);
  });

  test('leaves nothing behind where it cannot be made', async () => {
    const nowhere = path.join(folder, 'no-such-folder', 'demo.regang');
    expect(await makeDemo(nowhere, context)).toMatchObject({ ok: false, error: { code: 'no-such-folder' } });
    expect(existsSync(path.dirname(nowhere))).toBe(false);
  });

  test('comes from its CSV files alone: imported one by one they give the same plan', async () => {
    const empty = await opened(path.join(folder, 'own.regang'), 'create');
    try {
      expect(demoFiles.map((one) => one.kind).sort()).toEqual([...importKinds].sort());
      for (const { kind, file: name } of demoFiles) {
        const input = importFile.input.parse({ commandId: `by-hand-${kind}`, kind, text: demoText(name) });
        const meta = { commandId: input.commandId, name: importFile.name, ...context };
        const done = await empty.command(meta, (writer) => importFile.run(writer, input, context));
        if (!done.ok) throw new Error(done.error.message);
        expect(done.value.bad).toEqual([]);
        expect(done.value).toMatchObject({ stored: true, changed: 0 });
        expect(done.value.added).toBeGreaterThan(0);
      }
      const same = await empty.read((reader) => planOfBook(reader));
      expect(same.input).toEqual(plan.input);
      expect(same.answer).toEqual(plan.answer);
    } finally {
      await empty.close();
    }
  });

  test('has a ledger and a file in order', async () => {
    expect(await book.read((reader) => reader.check())).toEqual([]);
  });
});

describe('The designs and pours of the demo', () => {
  test('break no rule: no design and no pour has a stop', () => {
    const stops = [...plan.designs.values()].flatMap(({ design, takeOff }) =>
      takeOff.findings
        .filter((one) => one.severity === 'stop')
        .map((one) => `${design.code}: ${one.message}`),
    );
    const wrong = plan.pours.flatMap((pour) =>
      pourFindings(plan.job, pour, plan.pours, plan.designs)
        .filter((one) => one.severity === 'stop')
        .map((one) => one.message),
    );
    expect([...stops, ...wrong]).toEqual([]);
  });

  test('hold the locks of every edge where gangs meet: no pour has another number', () => {
    const findings = plan.pours.flatMap((pour) => pourFindings(plan.job, pour, plan.pours, plan.designs));
    expect(findings.filter(({ rule }) => rule === 'meeting-locks')).toEqual([]);
    const edges = plan.pours.flatMap((pour) => meetingLocks(pour, plan.designs).meetings);
    expect(edges.length).toBeGreaterThan(30);
  });

  test('close a box with the inner sides of the core alone, and its inside corners can be drawn in', () => {
    const boxes = (designs: JobPlan['designs']): readonly string[] =>
      plan.pours
        .flatMap((pour) => pourFindings(plan.job, pour, plan.pours, designs))
        .filter(({ rule }) => rule === 'box-shrinks')
        .map(({ where }) => where);
    expect(boxes(plan.designs)).toEqual([]);
    const stiff = new Map(
      [...plan.designs].map(([code, facts]) => [code, { ...facts, shrinking: new Set<string>() }]),
    );
    expect(boxes(stiff)).toEqual(['P08', 'P12', 'P16', 'P19'].map((code) => `${code}, side B`));
  });

  test('permit 1250 psf, and 1100 psf where panels stand on their side', () => {
    const permitted = new Map(
      [...plan.designs].map(([code, { takeOff }]) => [code, takeOff.permittedPressure]),
    );
    expect(formatPressure(permitted.get('GA')?.pa ?? 0, 'us')).toBe('1,250 psf');
    expect(permitted.get('GT')).toMatchObject({ panel: 'P424', onSide: true });
    expect(formatPressure(permitted.get('GT')?.pa ?? 0, 'us')).toBe('1,100 psf');
  });

  test('are all used, and every tie hole has one opposite but next to inside corners', () => {
    const used = new Set(plan.turns.turns.map((turn) => turn.design));
    expect([...plan.designs.keys()].filter((code) => !used.has(code))).toEqual([]);
    const alone = plan.pours
      .filter((pour) => pour.tieComponent !== null)
      .map((pour) => ({ code: pour.code, ...oppositeHoles(pour, plan.designs).alone }))
      .filter((one) => one.A + one.B > 0);
    expect(alone).toEqual([
      { code: 'P08', A: 24, B: 0 },
      { code: 'P11', A: 6, B: 0 },
      { code: 'P12', A: 24, B: 0 },
      { code: 'P16', A: 24, B: 0 },
      { code: 'P18', A: 6, B: 0 },
      { code: 'P19', A: 24, B: 0 },
    ]);
  });

  test('have fillers with adjustable locks, panels on their side, and gangs of one hand', () => {
    const { designs } = plan;
    expect(designs.get('GC')?.pieces['LKA']).toBe(8);
    expect(designs.get('GD')?.takeOff.fillers).toHaveLength(4);
    expect(designs.get('GT')?.takeOff.panels.filter((panel) => panel.onSide)).toHaveLength(3);
    expect(designs.get('GBL')?.design.hand).toBe('left');
    const p09 = plan.pours.find((pour) => pour.code === 'P09');
    expect(p09?.sides.map((side) => side.gangs.map((gang) => gang.design))).toEqual([
      ['GA', 'GBL'],
      ['GA', 'GBR'],
    ]);
    const swapped = p09 && {
      ...p09,
      sides: [p09.sides[0], { ...p09.sides[1], gangs: p09.sides[0].gangs }] as const,
    };
    expect(swapped && oppositeHoles(swapped, designs).alone).toEqual({ A: 9, B: 9 });
  });
});

describe('The README of the demo is true', () => {
  test('64 hours from Friday 15:00 end on Monday at 08:00, the clock having been put forward', () => {
    const times = plan.turns.times.get('P04');
    expect(times && [at(times.finish), at(times.ready), at(times.stripFrom)]).toEqual([
      '2026-03-06T15:00:00-05:00',
      '2026-03-09T08:00:00-04:00',
      '2026-03-09T08:00:00-04:00',
    ]);
  });

  test('the gangs of the first pour are assembled on Friday 27 February, after the first day of the plan', () => {
    const first = plan.input.turns.find((turn) => turn.id === 'P01/A1');
    const hours = plan.input.designs.find((design) => design.code === first?.design)?.assembleH ?? 0;
    const from = workBefore(Date.parse(first?.from ?? ''), hours, plan.job.shifts);
    expect(at(from).slice(0, 10)).toBe('2026-02-27');
    expect(plan.job.planFrom).toBe('2026-02-23');
    expect(plan.answer.runs.some((run) => run.turns[0] === 'P01/A1')).toBe(true);
  });

  test('locks rest on a list, and a third of the panels is on hire', async () => {
    const stock = await book.read((reader) => reader.stock(context.at));
    const locks = stock.filter(
      (line) => line.component === 'LK' && line.owner === 'OURS' && line.location === 'ENN',
    );
    expect(locks.map((line) => line.basis)).toContain('taken-from-list');
    const ready = stock.filter(
      (line) => line.component === 'P836' && line.condition === 'ready' && line.quantity > 0,
    );
    expect(ready.map(({ owner, quantity }) => `${owner} ${quantity}`).sort()).toEqual(['OURS 40', 'TFH 20']);
  });

  test('one brace is short on 11 March', () => {
    const [brace] = short(plan, 'BR');
    expect(brace).toMatchObject({ quantity: 1, from: '2026-03-11T07:00:00-04:00' });
    expect(brace?.loose.map((id) => id.split('/')[0])).toEqual(['P05', 'P06', 'P07', 'P08']);
  });

  test('8 ft rails are short by 4 on 13 March although six arrived the day before', () => {
    const levels = plan.input.components.find((one) => one.code === 'R8')?.stock;
    expect(levels).toEqual([
      { from: '2026-02-23T00:00:00-05:00', quantity: 18 },
      { from: '2026-03-12T09:00:00-04:00', quantity: 24 },
    ]);
    expect(most(plan, 'R8', '2026-03-13', '2026-03-14')).toBe(4);
  });

  test('locks are short by 24 on 13 March and by 36 from 24 to 26 March while no panel is', () => {
    const panels = ['P836', 'P830', 'P824', 'P812', 'P430', 'P424', 'P412'];
    for (const [from, to, quantity] of [
      ['2026-03-13', '2026-03-14', 24],
      ['2026-03-24', '2026-03-27', 36],
    ] as const) {
      expect(most(plan, 'LK', from, to)).toBe(quantity);
      expect([...panels, 'P436'].filter((code) => most(plan, code, from, to) > 0)).toEqual([]);
    }
  });

  test('two 4 ft panels are short on 18 March', () => {
    expect(most(plan, 'P436', '2026-03-18', '2026-03-19')).toBe(2);
  });

  test('corners are short on 1 April, inside corners cannot be hired', () => {
    for (const code of ['IC8', 'IC4', 'OC8', 'OC4'])
      expect(most(plan, code, '2026-04-01', '2026-04-02')).toBe(1);
    expect(short(plan, 'IC8')[0]?.loose.map((id) => id.split('/')[0])).toEqual(['P16', 'P18']);
    expect(plan.input.components.find((one) => one.code === 'IC8')?.hirePerDay).toBeNull();
  });

  test('nine ties are short on 1 April and on no other day', () => {
    expect(short(plan, 'TR12').map(({ quantity, from }) => [quantity, from.slice(0, 10)])).toEqual([
      [9, '2026-04-01'],
    ]);
  });

  test('GBL is re-ganged into GB, two GA into GT, and most gangs fly on', () => {
    const pairs = follows().map(({ from, to }) => ({
      from,
      designs: `${designOf(from)}-${designOf(to)}`,
      to,
    }));
    expect(pairs.find((one) => one.from.startsWith('P09') && one.designs === 'GBL-GB')?.to).toMatch(/^P13/u);
    const toRetaining = pairs.filter((one) => one.designs === 'GA-GT');
    expect(toRetaining.map(({ from, to }) => [from.slice(0, 3), to.slice(0, 3)])).toEqual([
      ['P19', 'P24'],
      ['P19', 'P24'],
    ]);
    const flown = pairs.filter(({ designs }) => designs.split('-')[0] === designs.split('-')[1]);
    expect(flown.length).toBeGreaterThan(60);
  });

  test('GNL and GNR stand by, made up, from P11 to P18', () => {
    const pairs = follows().filter(({ from }) => ['GNL', 'GNR'].includes(designOf(from) ?? ''));
    expect(pairs.map(({ from, to }) => [from.slice(0, 3), to.slice(0, 3)])).toEqual([
      ['P11', 'P18'],
      ['P11', 'P18'],
    ]);
  });

  test('putting the core off by two days mends this week and breaks the next', async () => {
    const moved = await book.read((reader) => planOfBook(reader, { P08: 2 }));
    expect(most(plan, 'BR', '2026-03-11', '2026-03-12')).toBe(1);
    expect(most(moved, 'BR', '2026-03-11', '2026-03-14')).toBe(0);
    expect(most(moved, 'LK', '2026-03-11', '2026-03-16')).toBe(0);
    for (const code of ['IC8', 'IC4', 'OC8', 'OC4']) {
      expect(most(plan, code, '2026-03-01', '2026-03-28')).toBe(0);
      expect(most(moved, code, '2026-03-18', '2026-03-20')).toBe(1);
    }
  });

  test('GA is 1,998 lb at 148 ft, 61 % of the chart; two as one gang are 3,776 lb, refused and parted again', async () => {
    const [pound, foot] = [453.592_37, 304_800_000];
    await book.read(async (reader) => {
      const { setup } = await valueOf(pickRead.run(reader, { design: 'GA' }));
      const far = { ...setup, slingsGrams: Math.round(250 * pound), setRadiusNm: 148 * foot };
      expect(far.crane).toBe('TC1');
      const single = await valueOf(pickCheck.run(reader, { design: 'GA', setup: far }));
      expect(Math.round(single.onCraneGrams / pound)).toBe(1998);
      expect(Math.round(single.cranePlaces[0]?.percent ?? 0)).toBe(61);
      expect(single.verdict).not.toBe('refused');
      const text = '8x36 | 8+4';
      const { geometry } = await valueOf(designRow.run(reader, { system: 'OMB', text, units: 'us' }));
      const [components, versions, cranes] = await Promise.all([
        reader.components(),
        reader.ruleVersions(),
        reader.cranes(),
      ]);
      const system = systemOf('OMB', components, rulesInForce(versions));
      const [crane] = cranes;
      if (!system.ok || crane === undefined) throw new Error('The demo has no crane or no rule tables.');
      const double = await valueOf(checkPick(system.value, geometry, far, crane));
      expect(Math.round(double.onCraneGrams / pound)).toBe(3776);
      expect(double.findings.filter((one) => one.rule === 'crane.capacity')).toHaveLength(1);
      const split = findSplit(system.value, geometry, far, crane);
      const parts = split.kind === 'found' ? split.parts.map((part) => part.check.onCraneGrams) : [];
      expect(parts).toEqual([single.onCraneGrams, single.onCraneGrams]);
    });
  });

  test('it tells every column of every kind of file', () => {
    const readme = readFileSync(new URL('../../seed-demo/README.md', import.meta.url), 'utf8');
    const rows = Object.values(importColumns)
      .flat()
      .map(({ name, needed, wanted }) => `| ${name} | ${needed ? 'yes' : 'no'} | ${wanted} |`);
    expect(rows.length).toBeGreaterThan(80);
    expect(rows.filter((row) => !readme.includes(row))).toEqual([]);
  });
});
