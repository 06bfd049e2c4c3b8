// Rule tables changed on the demo's book (invented data): what makes no sense is refused by name, what a change
// does to every design is told before it is kept, and earlier versions stay.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { footNm, inchNm } from '../../core/units/length.ts';
import { demoHost, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const commandId = (): string => `command-rules-${(commands += 1)}`;

beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

const inForce = (version?: number) =>
  host.ask('rules.read', { system: 'OMB', ...(version === undefined ? {} : { version }) });
type Read = Awaited<ReturnType<typeof inForce>>;

/** The rules with the count of one lock band changed. */
function withBand({ rules }: Read, upToNm: number, count: number): Read['rules'] {
  const locks = rules.locks!;
  const bands = locks.bands.map((band) => (band.upToNm === upToNm ? { ...band, count } : band));
  return { ...rules, locks: { ...locks, bands } };
}

const locksOf = async (design: string): Promise<number> =>
  (await host.ask('design.read', { design })).lines.find((line) => line.component === 'LK')?.quantity ?? 0;

test('Without a system the first one is read, with its name and versions; its catalogue holds what belongs to none', async () => {
  const read = await host.ask('rules.read', {});
  expect(read.system).toBe('OMB');
  expect(read.systems.map((each) => each.code)).toEqual(['OMB', 'OMC']);
  expect(new Set(read.components.map((each) => each.system))).toEqual(new Set(['OMB', null]));
  expect(await host.refused('rules.read', { system: 'X' })).toBe('unknown-system');
  expect(await host.refused('rules.read', { system: 'OMB', version: 9 })).toBe('unknown-version');
});

test('The band up to 50 in changed from 2 to 3 locks gives GA 7 locks more and is version 2; version 1 stays', async () => {
  const before = await inForce();
  // GA is 4 panels of 36 in, in rows of 8 ft and 4 ft: 4 level joints of 36 in and 3 upright ones of 48 in take
  // this band, 3 upright ones of 8 ft do not.
  const rules = withBand(before, 50 * inchNm, 3);
  const had = await locksOf('GA');
  const checked = await host.ask('rules.check', { system: 'OMB', rules });
  expect(checked.problems).toEqual([]);
  const ofGa = checked.changes.find((each) => each.design === 'GA');
  expect(ofGa?.lines).toEqual([{ component: 'LK', name: 'Lock', before: had, after: had + 7 }]);
  // A lock weighs 5 lb: 2268 g.
  expect((ofGa?.weightGramsAfter ?? 0) - (ofGa?.weightGramsBefore ?? 0)).toBe(7 * 2268);
  expect(await locksOf('GA')).toBe(had);
  const { designs } = await host.ask('design.list', {});
  const ofSystem = designs.filter((each) => each.system === 'OMB').length;
  expect(checked.changes.length + checked.unchanged).toBe(ofSystem);

  const save = { system: 'OMB', systemName: 'Ombric wall panels', rules };
  expect(await host.ask('rules.save', { commandId: commandId(), ...save })).toEqual({ version: 2 });
  expect(await locksOf('GA')).toBe(had + 7);
  const read = await host.ask('design.read', { design: 'GA' });
  expect([read.ruleVersion, read.savedWithRuleVersion]).toEqual([2, 1]);
  expect((await inForce()).systems[0]?.versions).toEqual([1, 2]);
  expect((await inForce(1)).rules).toEqual(before.rules);
  // Kept again unchanged it is no new version.
  expect(await host.ask('rules.save', { commandId: commandId(), ...save })).toEqual({ version: 2 });
});

async function refusedFor(change: (read: Read) => Partial<Read['rules']>) {
  const read = await inForce();
  const rules = { ...read.rules, ...change(read) };
  const { problems, changes } = await host.ask('rules.check', { system: 'OMB', rules });
  expect(changes).toEqual([]);
  const save = { commandId: commandId(), system: 'OMB', systemName: 'Ombric wall panels', rules };
  expect(await host.refused('rules.save', save)).toBe(problems[0]?.code);
  expect((await inForce()).version).toBe(read.version);
  return problems;
}

describe('What makes no sense is refused by name and kept nowhere', () => {
  test('bands that go down', async () => {
    const problems = await refusedFor(({ rules }) => ({
      locks: { ...rules.locks!, bands: [...rules.locks!.bands].reverse() },
    }));
    expect(problems[0]).toMatchObject({ code: 'rule-bands-not-rising', field: 'locks.bands[1].upTo' });
  });

  test('a table without rows', async () => {
    const problems = await refusedFor(({ rules }) => ({ locks: { ...rules.locks!, bands: [] } }));
    expect(problems[0]).toMatchObject({ code: 'rule-table-empty', field: 'locks.bands' });
  });

  test('a component that is not there', async () => {
    const problems = await refusedFor(({ rules }) => ({ locks: { ...rules.locks!, component: 'LOST' } }));
    expect(problems[0]).toMatchObject({ code: 'rule-component-unknown', field: 'locks.component' });
  });

  test('a code of another system, which would become a piece of this one', async () => {
    const { components } = await inForce();
    const panel = { ...components.find((each) => each.code === 'P836')!, system: 'OMC' };
    const { rules } = await host.ask('rules.read', { system: 'OMC' });
    const { problems } = await host.ask('rules.check', { system: 'OMC', rules, components: [panel] });
    expect(problems[0]).toMatchObject({ code: 'component-of-another-system', field: 'components.P836' });
  });

  test('two things at once: both are told, and the refusal says how many there are', async () => {
    const problems = await refusedFor(({ rules }) => ({
      locks: { ...rules.locks!, bands: [...rules.locks!.bands].reverse() },
      brackets: { ...rules.brackets!, component: 'LOST', maximumSpacingNm: 0 },
    }));
    const fields = problems.map((each) => each.field);
    for (const field of ['locks.bands[1].upTo', 'brackets.component', 'brackets.maximumSpacing'])
      expect(fields).toContain(field);
  });

  test('a gap: no band for a length that panels of the catalogue have', async () => {
    const problems = await refusedFor(({ rules }) => ({
      locks: { ...rules.locks!, bands: rules.locks!.bands.slice(0, 1) },
    }));
    expect(problems[0]?.field).toContain('locks');
  });

  test('components that cannot be: every one of them is named', async () => {
    const { rules, components } = await inForce();
    const piece = (code: string) => components.find((each) => each.code === code)!;
    const changed = [
      { ...piece('P836'), widthNm: 0 },
      { ...piece('P436'), weightGrams: 0 },
      { ...piece('LK'), weightGrams: -1 },
      { ...piece('R8'), lengthNm: -1 },
      { ...piece('R6'), hirePerDayCents: -1 },
      { ...piece('P824'), tieHolesNm: [[100 * footNm, 0] as [number, number]] },
    ];
    const { problems } = await host.ask('rules.check', { system: 'OMB', rules, components: changed });
    expect(problems.map((each) => [each.code, each.field])).toEqual([
      ['panel-without-size', 'components.P836'],
      ['weight-negative', 'components.LK'],
      ['tie-hole-outside', 'components.P824.tieHoles'],
      ['weight-zero', 'components.P436.weight'],
      ['size-not-positive', 'components.R8.length'],
      ['hire-negative', 'components.R6.hirePerDay'],
    ]);
  });

  test('a panel that designs are made of, moved to another system', async () => {
    const { rules, components } = await inForce();
    const panel = components.find((each) => each.code === 'P836')!;
    const { problems } = await host.ask('rules.check', {
      system: 'OMB',
      rules,
      components: [{ ...panel, system: 'OMC' }],
    });
    expect(problems.length).toBeGreaterThan(0);
    expect(problems[0]).toMatchObject({ code: 'panel-unknown' });
    expect(problems[0]?.message).toContain('Design GA');
  });
});

test('A lock of no system that gets heavier changes designs of both systems; one of a system only its own', async () => {
  const { rules, components } = await inForce();
  const heavier = (code: string) => {
    const piece = components.find((each) => each.code === code)!;
    return { ...piece, weightGrams: piece.weightGrams + 100 };
  };
  const changedBy = async (code: string) => {
    const asked = { system: 'OMB', rules, components: [heavier(code)] };
    return (await host.ask('rules.check', asked)).changes.map((each) => each.design);
  };
  expect(await changedBy('LK')).toContain('CB');
  const byPanel = await changedBy('P836');
  expect(byPanel).toContain('GA');
  expect(byPanel).not.toContain('CB');
  const save = { commandId: commandId(), system: 'OMB', systemName: 'Ombric wall panels' };
  const { version } = await inForce();
  // Components have no versions: the rule tables did not change.
  expect(await host.ask('rules.save', { ...save, rules, components: [heavier('P836')] })).toEqual({
    version,
  });
  const kept = (await inForce()).components.find((each) => each.code === 'P836');
  expect(kept).toEqual(heavier('P836'));
});

test('A new system is entered with its panels and rule tables, and gangs are drawn of it', async () => {
  const panel = {
    code: 'Q60',
    name: 'Panel 600 x 1200',
    kind: 'panel' as const,
    weightGrams: 30_000,
    widthNm: 600_000_000,
    heightNm: 1_200_000_000,
    pressurePa: 60_000,
    pressureOnSidePa: 50_000,
    system: 'NEW',
    hirePerDayCents: null,
    regangPerPieceH: 0.1,
    remark: null,
  };
  const locks = { component: 'LK', bands: [{ upToNm: 1_200_000_000, count: 2 }] };
  const save = { system: 'NEW', systemName: 'New panels', rules: { locks }, components: [panel] };
  expect(await host.ask('rules.save', { commandId: commandId(), ...save })).toEqual({ version: 1 });
  const read = await host.ask('rules.read', { system: 'NEW' });
  expect(read.components.find((each) => each.code === 'Q60')).toEqual(panel);
  const { geometry } = await host.ask('design.row', {
    system: 'NEW',
    text: '600 600 | 1200',
    units: 'metric',
  });
  const { lines } = await host.ask('design.draft', { system: 'NEW', geometry });
  expect(lines.map((line) => [line.component, line.quantity])).toEqual([
    ['Q60', 2],
    ['LK', 2],
  ]);
});
