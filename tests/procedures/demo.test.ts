// Every procedure once on the demo job, each answer held against its shape, and what the answers must say
// of one another.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { procedures } from '../../core/procedures/all.ts';
import { wordsOf } from '../sheets/read-tree.ts';
import { askOfCounts, askOfLookAlikes, askOfSettings } from './demo-counts.ts';
import { askOfCare } from './demo-care.ts';
import { askOfContainers, askOfGangs, askOfGear } from './demo-gangs.ts';
import { demoHost, job, type DemoHost } from './demo-host.ts';
import { askOfLedger } from './demo-ledger.ts';
import { askOfLoading } from './demo-loading.ts';
import { askOfPapers } from './demo-papers.ts';
import { askOfDates } from './demo-plan-dates.ts';
import { askOfDayEnd, askOfDaySheets } from './demo-plan-dayend.ts';
import { askOfFixed, askOfTold } from './demo-plan-told.ts';
import { askOfWhy, askToKeep } from './demo-plan-why.ts';
import { askOfCalendar, askOfPourFacts, askOfWork } from './demo-plan-work.ts';
import { askOfWays } from './demo-plan-ways.ts';
import { askOfTickets } from './demo-tickets.ts';
import { askOfChanges, askOfKept } from './demo-plan-changes.ts';

let host: DemoHost;
const asked = new Set<string>();

beforeAll(async () => {
  const made = await demoHost();
  host = {
    ...made,
    ask: (name, input) => {
      asked.add(name);
      return made.ask(name, input);
    },
  };
});

afterAll(async () => {
  await host.close();
  // A procedure that no test here asked was not looked at.
  expect([...asked].sort()).toEqual(Object.keys(procedures).sort());
});

describe('what is read', () => {
  test('the book says which jobs it holds', async () => {
    const state = await host.ask('book.state', {});
    expect(state.jobs.map((each) => each.code)).toEqual([job]);
    expect(state.movements).toBeGreaterThan(40);
    expect((await host.ask('book.check', {})).problems).toEqual([]);
  });

  test('the board shows 27 pours in whole weeks, Monday first, and every turn in one run', async () => {
    const board = await host.ask('board.read', { job });
    expect(board.pours).toHaveLength(27);
    expect(board.days.length % 7).toBe(0);
    expect(new Date(`${board.days[0]?.date}T12:00:00Z`).getUTCDay()).toBe(1);
    const ids = new Set(board.turns.map((turn) => turn.id));
    for (const turn of board.turns) {
      if (turn.after.how !== 'break-down') expect(ids).toContain(turn.after.turn);
      if (turn.before.how === 'fly-on' || turn.before.how === 'regang')
        expect(ids).toContain(turn.before.turn);
    }
  });

  test('the plan says what else could be done with a gang, and who holds what is short', async () => {
    await askOfWhy(host.ask);
    await askToKeep(host.ask);
  }, 30_000);

  test('a shortfall has its ways out, and can be left with a reason', async () => {
    await askOfWays(host);
  }, 30_000);

  test('what is told and what is fixed is marked, obeyed, priced and taken back', async () => {
    await askOfTold(host);
    await askOfFixed(host);
  }, 30_000);

  test('a change is asked about, carried out, listed and taken back', () => askOfChanges(host));

  test('a what-if is kept, compared and dropped', () => askOfKept(host));

  test('exceptions of the calendar, crew, crane and pads, and what is entered of a pour beside its dates', async () => {
    await askOfCalendar(host);
    await askOfWork(host);
    await askOfPourFacts(host);
  }, 60_000);

  test('crew hours of the days add up to those of the steps', async () => {
    const { days, steps, job: ofBoard } = await host.ask('board.read', { job });
    const needed = days.reduce((sum, day) => sum + day.crewHoursNeeded, 0);
    const worked = steps.reduce((sum, each) => sum + each.hours, 0) * ofBoard.crew;
    expect(steps.length).toBeGreaterThan(100);
    expect(needed).toBeCloseTo(worked, 6);
  });

  test('who holds the pieces of a shortfall adds up to what is held, and held less stock is what is short', async () => {
    const { shortfalls } = await host.ask('shortfall.list', { job });
    expect(shortfalls.length).toBeGreaterThanOrEqual(2);
    for (const { turns, loose, held, stock, quantity } of shortfalls) {
      const pieces = [...turns, ...loose].reduce((sum, holder) => sum + holder.pieces, 0);
      expect(pieces).toBe(held);
      expect(held - stock).toBe(quantity);
    }
  });

  test('a component without a shortfall that is nearly used up is named as the next to break', async () => {
    const { tightest, shortfalls } = await host.ask('shortfall.list', { job });
    expect(tightest.length).toBeGreaterThan(0);
    for (const { component, held, stock } of tightest) {
      expect(held).toBeLessThanOrEqual(stock);
      expect(shortfalls.map((each) => each.component)).not.toContain(component);
    }
  });

  test('the three curves differ, and held is never under standing', async () => {
    const { standing, held, stock } = await host.ask('curve.read', { job, component: 'LK' });
    const levelOf = (curve: typeof held, at: number): number =>
      curve.findLast((each) => Date.parse(each.from) <= at)?.quantity ?? 0;
    expect(stock.length).toBeGreaterThan(0);
    expect(held).not.toEqual(standing);
    for (const { from } of [...standing, ...held])
      expect(levelOf(held, Date.parse(from))).toBeGreaterThanOrEqual(levelOf(standing, Date.parse(from)));
  });

  test('a delivery on 12 March raises the stock of 8 ft rails from 18 to 24, once', async () => {
    const { stock } = await host.ask('curve.read', { job, component: 'R8' });
    expect(stock.map((level) => level.quantity)).toEqual([18, 24]);
    expect(stock[1]?.from).toBe('2026-03-12T09:00:00-04:00');
  });

  test('a shortfall stands at each day it touches: the brace on 11 March alone', async () => {
    const { days, shortfalls } = await host.ask('board.read', { job });
    const brace = shortfalls.find((each) => each.component === 'BR');
    const touched = days.filter((day) => day.shortfalls.includes(brace?.id ?? ''));
    expect(touched.map((day) => day.date)).toEqual(['2026-03-11']);
  });

  test('a design drafted is what it is when read, a row typed is that design, and its states are compared', async () => {
    const read = await host.ask('design.read', { design: 'GBL' });
    const draft = await host.ask('design.draft', { system: 'OMB', geometry: read.geometry, design: 'GBL' });
    expect(draft.lines).toEqual(read.lines);
    expect(draft.sameAs).toEqual([{ design: 'GBR', how: 'mirrored' }]);
    const { geometry } = await host.ask('design.row', {
      system: 'OMB',
      text: read.rowText.us ?? '',
      units: 'us',
    });
    expect(geometry.panels).toEqual(read.geometry.panels);
    const { revisions } = await host.ask('design.revisions', { design: 'GBL' });
    expect(revisions.map((each) => each.number)).toEqual([1]);
    const compared = await host.ask('design.compare', { design: 'GBL', before: 1, after: 1 });
    expect([compared.lines, compared.panelsOnlyBefore, compared.findingsNew]).toEqual([[], [], []]);
  });

  test('rule tables in force change no design', async () => {
    const { system, rules, version } = await host.ask('rules.read', {});
    expect(version).toBe(1);
    const { problems, changes, unchanged } = await host.ask('rules.check', { system, rules });
    expect([problems, changes]).toEqual([[], []]);
    expect(unchanged).toBeGreaterThan(8);
  });

  test('a design is drawn from its lower left corner and its lines weigh what its summary says', async () => {
    const { designs } = await host.ask('design.list', {});
    expect(designs.length).toBeGreaterThan(8);
    for (const { code } of designs) {
      const detail = await host.ask('design.read', { design: code });
      expect(Math.min(...detail.panels.map((panel) => panel.xNm))).toBe(0);
      const grams = detail.lines.filter((line) => line.kind !== 'hook').map((line) => line.weightGrams);
      expect(grams.reduce((sum, each) => sum + each, 0)).toBe(detail.summary.weightGrams);
    }
  });

  test('ties of a wall are counted once per pair of opposite holes', async () => {
    const { pours } = await host.ask('pour.list', { job });
    const wall = pours.find((each) => each.pour.code === 'P01');
    const gangs = wall?.pour.sides.map((side) => side.gangs.length);
    const ties = wall?.loose.find((line) => line.counted);
    const { holes } = await host.ask('design.read', { design: 'GA' });
    expect(gangs).toEqual([2, 2]);
    // Two gangs of the same design side by side, and the same two opposite: their holes twice, not four times.
    expect(ties?.quantity).toBe(2 * holes.length);
  });

  test('an assembly sheet says where the gang stands first, and refuses a pour at which it does not', async () => {
    const sheet = await host.ask('sheet.assembly', { design: 'GC' });
    expect(sheet.foot).toBe('Assembly sheet GC revision A · TB26 Tarrowmere Basin');
    expect(/P04 side A +Tank wall W3/u.test(wordsOf(sheet.tree))).toBe(true);
    expect(await host.refused('sheet.assembly', { design: 'GC', job, pour: 'P01' })).toBe('not-at-pour');
    expect(await host.refused('sheet.assembly', { design: 'none' })).toBe('unknown-design');
  });

  test('a pick sheet of a gang for which no pick is entered says so, with its weights', async () => {
    const { tree, title } = await host.ask('sheet.pick', { design: 'GT', units: 'metric' });
    expect(title).toBe('Pick sheet GT Retaining wall gang 12 x 10 ft, top row on its side');
    const words = wordsOf(tree);
    expect(words).toContain('Not checked');
    expect(words).toContain('NOT ENTERED');
    // 1,430 lb by the take-off; 1 lb = 0.45359237 kg (international yard and pound agreement, 1959).
    expect(words).toContain('648.6 kg');
  });

  test('a pick is checked as entered, kept, and read back', async () => {
    const { setup } = await host.ask('pick.read', { design: 'GB' });
    const checked = await host.ask('pick.check', { design: 'GB', setup });
    expect(checked.weights.length).toBeGreaterThan(3);
    await host.ask('pick.save', { commandId: 'command-pick-1', design: 'GB', setup });
    expect((await host.ask('pick.read', { design: 'GB' })).isEntered).toBe(true);
    const crane = {
      code: 'MC',
      name: 'Mobile crane',
      chart: [{ radiusNm: 10_000_000_000, capacityGrams: 4_000_000 }],
      deductGrams: 100_000,
      cautionPercent: 75,
      stopPercent: 100,
      windLimitMps: null,
      windWhose: '',
    };
    await host.ask('crane.save', { commandId: 'command-crane-1', crane });
    expect((await host.ask('crane.list', {})).cranes).toContainEqual(crane);
  });

  test('a wall is filled on both sides, ties through, and its new gangs are kept', async () => {
    const foot = 304_800_000;
    const end = { kind: 'free' as const, overhangNm: 0 };
    const wall = {
      legs: [{ lengthNm: 24 * foot }],
      turns: [],
      closed: false,
      start: end,
      end,
      thicknessNm: foot,
      heightNm: 12 * foot,
      freeboardNm: 0,
    };
    const useStock = { locations: ['TFH', 'TB'], at: '2026-03-02T07:00:00-05:00' };
    const wanted = { system: 'OMB', wall, useStock, useDesigns: false, limits: { lengthNm: 12 * foot } };
    const { proposals, proven } = await host.ask('fill.propose', wanted);
    const [first] = proposals;
    expect(proven).toBe(true);
    expect(first?.score).toMatchObject({ holesAlone: 0, fillerNm: 0, newFaceNm: 48 * foot });
    expect(first?.gangs.filter(({ side }) => side === 'A')).toHaveLength(2);
    const [made] = first?.designs ?? [];
    if (made === undefined) throw new Error('No design was proposed.');
    const { code, name, geometry } = made;
    const design = { code, name, system: 'OMB', revision: 'A', geometry, assembleH: 2, breakDownH: 1 };
    const hand = made.symmetrical ? ('symmetrical' as const) : ('left' as const);
    const kept = await host.ask('fill.keep', { commandId: 'command-keep-1', designs: [{ ...design, hand }] });
    expect(kept.kept).toEqual([{ code, number: 1 }]);
    // All or none: a code that is there already keeps the other one out as well.
    const twice = [
      { ...design, hand, code: 'ZZ' },
      { ...design, hand },
    ];
    expect(await host.refused('fill.keep', { commandId: 'command-keep-2', designs: twice })).toBe(
      'design-exists',
    );
    expect(await host.refused('design.read', { design: 'ZZ' })).toBe('unknown-design');
    const curved = { ...wanted, wall: { ...wall, outOfScope: ['curved' as const] } };
    expect(await host.refused('fill.propose', curved)).toBe('ask-the-designer');
    const column = { widthANm: 2 * foot, widthBNm: 3 * foot, heightNm: 12 * foot, freeboardNm: 0 };
    const both = { ...wanted, column };
    expect(await host.refused('fill.propose', both)).toBe('wall-or-column');
    const { wall: _, ...without } = both;
    const [half] = (await host.ask('fill.propose', without)).proposals;
    expect(half?.designs).toMatchObject([{ foldNm: 2 * foot, widthNm: 5 * foot, heightNm: 12 * foot }]);
    expect(half?.loose.filter(({ purpose }) => purpose === 'outside-corner')).toHaveLength(8);
  });

  test('the catalogue and the places are told', async () => {
    expect((await host.ask('component.list', {})).components.length).toBeGreaterThanOrEqual(40);
    const places = await host.ask('yard.places', {});
    expect(places.owners.map((owner) => owner.kind)).toContain('supplier');
    expect(places.locations.filter((place) => place.inHand).length).toBeGreaterThan(0);
  });
});

describe('what is written', () => {
  test('a movement is booked, changes the quantities, and is taken back by its opposite', async () => {
    const quantity = async (): Promise<number> =>
      (await host.ask('yard.quantities', {})).rows
        .filter((row) => row.component === 'LK' && row.condition === 'to-repair')
        .reduce((sum, row) => sum + row.quantity, 0);
    const before = await quantity();
    const { rows } = await host.ask('yard.quantities', {});
    const row = rows.find((each) => each.component === 'LK' && each.condition === 'ready')!;
    const movement = {
      id: 'movement-1',
      component: 'LK',
      quantity: 3,
      owner: row.owner,
      from: row.location,
      to: row.location,
      condition: 'ready',
      conditionAfter: 'to-repair',
      reason: 'repair',
      at: '2026-03-02T08:00:00-05:00',
    } as const;
    const move = { commandId: 'command-move-1', movements: [movement] };
    expect(await host.ask('yard.move', move)).toEqual({ booked: 1 });
    expect(await quantity()).toBe(before + 3);
    // Sent twice, done once.
    await host.ask('yard.move', move);
    expect(await quantity()).toBe(before + 3);
    const reverse = { movement: 'movement-1', id: 'movement-2', remark: 'a slip of the pen' };
    await host.ask('yard.reverse', { commandId: 'command-back-1', ...reverse });
    expect(await quantity()).toBe(before);
    const page = await host.ask('yard.movements', { component: 'LK', limit: 2 });
    expect(page.rows.map((each) => each.reason)).toEqual(['reversal', 'repair']);
    expect(page.rows[1]?.reversedBy).toBe('movement-2');
    const again = { commandId: 'command-back-2', ...reverse, id: 'movement-3' };
    expect(await host.refused('yard.reverse', again)).toBe('already-reversed');
    const tooMany = { ...movement, id: 'movement-4', quantity: 100_000 };
    const refused = await host.refused('yard.move', { commandId: 'command-move-2', movements: [tooMany] });
    expect(refused).toBe('not-enough');
  });

  test('a design is kept and taken out, and one that a pour needs stays', async () => {
    const { summary, geometry, assembleH, breakDownH } = await host.ask('design.read', { design: 'GBL' });
    const { name, system, revision, hand } = summary;
    const design = { code: 'NEW', name, system, revision, hand, geometry, assembleH, breakDownH };
    const save = { commandId: 'command-design-1', design, isNew: true };
    expect((await host.ask('design.save', save)).sameAs).toContainEqual({ design: 'GBL', how: 'same' });
    const remove = { commandId: 'command-design-2', design: 'NEW' };
    expect((await host.ask('design.remove', remove)).removed).toEqual(design);
    const needed = { commandId: 'command-design-3', design: 'GA' };
    expect(await host.refused('design.remove', needed)).toBe('design-needed');
  });

  test('rule tables kept unchanged are no new version', async () => {
    const { system, systems, rules } = await host.ask('rules.read', {});
    const systemName = systems[0]?.name ?? '';
    const save = { commandId: 'command-rules-1', system, systemName, rules };
    expect(await host.ask('rules.save', save)).toEqual({ version: 1 });
  });

  test('a pour is saved, refused where it closes before it is set, and removed', async () => {
    const { pours } = await host.ask('pour.list', { job });
    const last = pours.at(-1)!.pour;
    const added = { ...last, code: 'NEW', after: [last.code] };
    expect(await host.ask('pour.save', { commandId: 'command-save-1', job, pour: added })).toMatchObject({
      added: true,
    });
    const wrong = {
      ...added,
      order: 'face-first' as const,
      sides: [
        added.sides[0],
        { ...added.sides[1], setAt: '2026-01-05T07:00:00-05:00' },
      ] as typeof added.sides,
    };
    const save = { commandId: 'command-save-2', job, pour: wrong };
    expect(await host.refused('pour.save', save)).toBe('close-before-set');
    const needed = { commandId: 'command-remove-1', job, pour: last.code };
    expect(await host.refused('pour.remove', needed)).toBe('pour-needed');
    const removed = await host.ask('pour.remove', { commandId: 'command-remove-2', job, pour: 'NEW' });
    expect(removed.removed).toEqual(added);
  });

  test('what moving the core would change is told and nothing is stored; kept, the board says the same', async () => {
    const moves = [{ pour: 'P08', workingDays: 2 }];
    const board = await host.ask('board.read', { job });
    const whatif = await host.ask('plan.whatif', { job, moves });
    expect(whatif.newShortfalls.length + whatif.goneShortfalls.length).toBeGreaterThan(0);
    expect((await host.ask('board.read', { job })).shortfalls).toEqual(board.shortfalls);
    const { before } = await host.ask('pour.move', { commandId: 'command-shift-1', job, moves });
    const moved = await host.ask('board.read', { job });
    expect(moved.shortfalls).toEqual(whatif.after.shortfalls);
    expect(moved.cost).toEqual(whatif.after.cost);
    // Put back as it was: undo.
    for (const pour of before)
      await host.ask('pour.save', { commandId: `command-back-${pour.code}`, job, pour });
    expect((await host.ask('board.read', { job })).pours).toEqual(board.pours);
    expect((await host.ask('board.read', { job })).shortfalls).toEqual(board.shortfalls);
  });

  test('what is off and what is new is told for today and the next working day, from today on', async () => {
    const moves = [{ pour: 'P08', workingDays: 2 }];
    const onThe = async (today: string) => {
      const { droppedSteps, addedSteps } = await host.ask('plan.whatif', { job, moves, today });
      const told = (steps: typeof droppedSteps) =>
        steps.filter((each) => each.pour === 'P08' && each.kind === 'set').map((each) => each.date);
      return { dropped: told(droppedSteps), added: told(addedSteps) };
    };
    // Side A was to be set on Wednesday 11 March, and now is on Friday.
    expect(await onThe('2026-03-11')).toEqual({ dropped: ['2026-03-11'], added: [] });
    expect(await onThe('2026-03-10')).toEqual({ dropped: ['2026-03-11'], added: [] });
    expect(await onThe('2026-03-12')).toEqual({ dropped: [], added: ['2026-03-13'] });
    expect(await onThe('2026-03-09')).toEqual({ dropped: [], added: [] });
  });

  test('a plan that is made is what the board shows, and is bounded', async () => {
    const board = await host.ask('board.read', { job });
    const plan = await host.ask('plan.make', { commandId: 'command-plan-1', job });
    expect(plan.shortfalls).toEqual(board.shortfalls);
    expect(plan.cost).toEqual(board.cost);
    expect(plan.boundCents).toBeLessThanOrEqual(plan.cost.totalCents);
    expect(plan.runs.flatMap((run) => run.turns).sort()).toEqual(plan.turns.map((turn) => turn.id).sort());
  });

  test('a file with a bad row is taken not at all, and the row is named', async () => {
    const text =
      'component,quantity,condition,owner,location,basis,date\nLK,-5,ready,NOBODY,NOWHERE,counted,2026-02-20\n';
    const read = await host.ask('import.file', { commandId: 'command-import-1', kind: 'stock', text });
    expect(read.stored).toBe(false);
    expect(read.bad.map(({ line, column }) => [line, column])).toContainEqual([2, 'quantity']);
  });

  test('names that are not there are refused by name', async () => {
    expect(await host.refused('board.read', { job: 'X' })).toBe('unknown-job');
    expect(await host.refused('plan.whatif', { job, moves: [{ pour: 'X', workingDays: 1 }] })).toBe(
      'unknown-pour',
    );
    expect(await host.refused('design.read', { design: 'X' })).toBe('unknown-design');
    expect(await host.refused('curve.read', { job, component: 'X' })).toBe('unknown-component');
    expect(await host.refused('yard.quantities', { location: 'X' })).toBe('unknown-location');
  });
});

describe('gangs, lifting gear and containers', () => {
  test('a gang is built, re-ganged, stood, stripped and broken down', () => askOfGangs(host.ask));

  test('lifting gear is entered and inspected, and is out of date the day after', () => askOfGear(host.ask));

  test('a bucket is tagged, filled, moved and counted by weight', () => askOfContainers(host.ask));

  test('pieces are cleaned, set apart and repaired, and rates are told', () => askOfCare(host.ask));
});

test('a day is read, ended, corrected and taken back', () => askOfDayEnd(host.ask), 30_000);

test('a pour has no date, three to choose from, and is placed', () => askOfDates(host.ask));

test('the week and the day are printed', () => askOfDaySheets(host.ask));

test('the yard by component, histories and pages of the ledger', () => askOfLedger(host));

test('notes with their claims, figures side by side, a photo, and what is owed', () => askOfPapers(host.ask));

test('a strip ticket is made, counted and booked, late finds and a strip in one go', () =>
  askOfTickets(host.ask));

test('a pick list, what was given instead, a truck and its load', () => askOfLoading(host.ask));

describe('counts', () => {
  test('look-alikes are proposed, entered and taken out', () => askOfLookAlikes(host.ask));

  test('settings of the yard are kept whole and put back', () => askOfSettings(host.ask));

  test('a blind count is entered once, explained and booked; another is given up', () =>
    askOfCounts(host.ask));
});
