// What the demo sets around its plan and no file of an import can carry: hours of the crane, a pad, how far each pour is
// from the crane, the storey on which each storey of the core stands, whom to call. Invented like the rest; it changes no turn.
import type { BookWriter } from '../core/book/book.ts';
import { firstPlanningSettings, type PlanningSettings } from '../core/plan/planning-settings.ts';
import { noPourFacts } from '../core/procedures/changed-source.ts';

const weekdays = [1, 2, 3, 4, 5];
const feet = (count: number): number => count * 304_800_000;

/** The crane is shared: two hours a day for the forms, in three stretches, 12 minutes a pick. */
const stretches = [
  ['07:00', '07:36'],
  ['10:30', '10:54'],
  ['13:00', '14:00'],
] as const;

export const demoSettings: PlanningSettings = {
  ...firstPlanningSettings,
  cranes: stretches.map(([start, end]) => ({ crane: 'TC1', days: weekdays, start, end, minutesPerPick: 12 })),
  pads: [
    {
      code: 'N',
      name: 'North pad',
      use: 'both',
      places: 9,
      reach: { crane: 'TC1', radiusNm: feet(100) },
    },
  ],
  laidDown: true,
  // Numbers that are kept for stories: they ring nowhere.
  phones: [
    { who: 'Inspector of works', phone: '555-0112' },
    { who: 'Steel crew', phone: '555-0134' },
    { who: 'Embeds crew', phone: '555-0135' },
  ],
};

/** Radius of each pour's farthest gang in feet. */
const radii: Readonly<Record<string, number>> = {
  P01: 92,
  P02: 92,
  P03: 110,
  P04: 110,
  P05: 130,
  P06: 110,
  P07: 148,
  P08: 60,
  P09: 110,
  P10: 110,
  P11: 130,
  P12: 60,
  P13: 92,
  P14: 110,
  P15: 130,
  P16: 60,
  P17: 110,
  P18: 130,
  P19: 60,
  P20: 92,
  P21: 110,
  P22: 130,
  P23: 130,
  P24: 148,
  P25: 148,
  P26: 130,
  P27: 110,
};

/** Brackets of a storey hang on the one below once that is 40 hours old. */
const carriedBy: Readonly<Record<string, string>> = { P12: 'P08', P16: 'P12', P19: 'P16' };

export async function putDemoPlanning(writer: BookWriter, job: string): Promise<void> {
  await writer.putJobEntry({ job, kind: 'settings', id: 'settings' }, demoSettings);
  for (const [pour, radius] of Object.entries(radii)) {
    const below = carriedBy[pour];
    await writer.putJobEntry(
      { job, kind: 'pour-facts', id: pour },
      {
        ...noPourFacts,
        reach: { crane: 'TC1', radiusNm: feet(radius) },
        standsOn: below === undefined ? null : { pour: below, strengthH: 40 },
      },
    );
  }
}
