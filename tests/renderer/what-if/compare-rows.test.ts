import { describe, expect, test } from 'vitest';
import { loadLines } from '../../../renderer/parts/changes/difference.ts';
import { type Comparison, compareRows } from '../../../renderer/screens/what-if/compare-rows.ts';

type Summary = Comparison['one']['summary'];

function summary(more: Partial<Summary> = {}): Summary {
  return {
    cost: { labourCents: 900, hireCents: 100, changeCents: 0, totalCents: 1000, unmet: 0 },
    boundCents: 980,
    shortfalls: [],
    plannedCents: 0,
    allCents: 1000,
    savableCents: 20,
    changedTold: 0,
    gangs: 5,
    pours: 3,
    crewPeak: { date: '2026-03-11', needed: 40.25, there: 42.5 },
    cranePeak: null,
    ...more,
  };
}

function comparison(one: Summary, other: Summary, components: Comparison['components'] = []): Comparison {
  const side = { kept: null, name: null, changes: [] };
  return {
    one: { ...side, summary: one },
    other: { ...side, summary: other },
    components,
    newShortfalls: [],
    goneShortfalls: [],
    changedShortfalls: [],
    costChangeCents: 0,
    allChangeCents: 0,
    pours: [],
    days: [],
    toldChanged: [],
    toldAgain: [],
    rerouted: [],
    heldLonger: [],
    call: [],
    findings: [],
  };
}

const money = (cents: number): string => `$${cents / 100}`;

function lines(of: Comparison): readonly string[] {
  return compareRows(of, money).map(
    ({ name, one, other, between }) => `${name}: ${one} | ${other} | ${between}`,
  );
}

describe('two plans in rows', () => {
  test('equal ones: nothing between, and no row of a cost or a crane that neither has', () => {
    expect(lines(comparison(summary(), summary()))).toEqual([
      'Cost in all: $10 | $10 | ',
      'Labour: $9 | $9 | ',
      'Hire: $1 | $1 | ',
      'Still to be saved at most: $0.2 | $0.2 | ',
      'Piece-days short that cannot be hired: 0 | 0 | ',
      'Shortfalls: 0 | 0 | ',
      'Told instructions changed: 0 | 0 | ',
      'Gangs used: 5 | 5 | ',
      'Pours: 3 | 3 | ',
      'Fullest day of the crew: Wed 11 Mar: 40.3 of 42.5 h | Wed 11 Mar: 40.3 of 42.5 h | ',
    ]);
  });

  test('differences keep their sign, a day over its crew says so, a component has its most at once', () => {
    const other = summary({
      allCents: 1250,
      plannedCents: 250,
      gangs: 4,
      changedTold: 2,
      crewPeak: { date: '2026-03-12', needed: 50, there: 42.5 },
    });
    const all = lines(comparison(summary(), other, [{ component: 'LK', name: 'Lock', one: 84, other: 0 }]));
    expect(all).toContain('Cost in all: $10 | $12.5 | +$2.5');
    expect(all).toContain('Pieces planned to come: $0 | $2.5 | +$2.5');
    expect(all).toContain('LK short at most: 84 | 0 | −84');
    expect(all).toContain('Told instructions changed: 0 | 2 | +2');
    expect(all).toContain('Gangs used: 5 | 4 | −1');
    expect(all).toContain(
      'Fullest day of the crew: Wed 11 Mar: 40.3 of 42.5 h | Thu 12 Mar: 50 of 42.5 h, over | ',
    );
  });
});

function text(days: Comparison['days']): readonly string[] {
  return loadLines(days, (date) => date).map(
    (line) => `${line.over ? 'over ' : ''}${line.what}: ${line.text}`,
  );
}

describe('days with another load', () => {
  const load = {
    crewHoursNeeded: 30,
    crewHoursThere: 40,
    craneMinutesNeeded: null,
    craneMinutesThere: null,
    padPlacesNeeded: null,
    padPlacesThere: null,
  };

  test('say what there was, and are over only past what is there', () => {
    expect(
      text([
        { date: 'Mon', before: load, after: { ...load, crewHoursNeeded: 40 } },
        { date: 'Tue', before: load, after: { ...load, crewHoursNeeded: 40.5 } },
        { date: 'Wed', before: load, after: null },
      ]),
    ).toEqual([
      'Mon, crew: 40 of 40 h, was 30',
      'over Tue, crew: 40.5 of 40 h, was 30',
      'Wed, crew: 0 of 0 h, was 30',
    ]);
  });

  test('crane and pads only where they are set', () => {
    const crane = {
      ...load,
      craneMinutesNeeded: 60,
      craneMinutesThere: 480,
      padPlacesNeeded: 2,
      padPlacesThere: 4,
    };
    expect(
      text([
        { date: 'Mon', before: crane, after: { ...crane, craneMinutesNeeded: 500, padPlacesNeeded: 5 } },
      ]),
    ).toEqual(['over Mon, crane: 500 of 480 min, was 60', 'over Mon, pads: 5 of 4 places, was 2']);
  });
});
