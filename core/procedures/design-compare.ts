// Two saved states of a design held against each other. Both are taken off by the rule tables in force, so that
// what differs is the gang and not the tables.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookComponent, DesignRevision, RuleVersion } from '../book/book.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
import { changedFindings, changedLine, changedLines } from './design-change.ts';
import { query } from './procedure.ts';
import { code, finding } from './shapes.ts';
import { drawnPanel, shownTakeOff, shownTakeOffShape } from './shown-takeoff.ts';
import { unknownDesign } from './unknown.ts';

const state = z.strictObject({
  number: z.int(),
  revision: z.string(),
  name: z.string(),
  hand: z.enum(['left', 'right', 'symmetrical']),
  ...shownTakeOffShape,
});

export const designCompare = query({
  name: 'design.compare',
  input: z.strictObject({ design: code, before: z.int().min(1), after: z.int().min(1) }),
  output: z.strictObject({
    before: state,
    after: state,
    lines: z.array(changedLine),
    /** Panels that stand at that place in the one state alone. */
    panelsOnlyBefore: z.array(drawnPanel),
    panelsOnlyAfter: z.array(drawnPanel),
    findingsGone: z.array(finding),
    findingsNew: z.array(finding),
  }),
  run: async (book, { design, before, after }) => {
    const [states, components, versions] = await Promise.all([
      book.designRevisions(design),
      book.components(),
      book.ruleVersions(),
    ]);
    if (states.length === 0) return unknownDesign(design);
    const rules = rulesInForce(versions);
    const was = stateOf(states, before, 'before', components, rules);
    if (!was.ok) return was;
    const is = stateOf(states, after, 'after', components, rules);
    if (!is.ok) return is;
    return answer({
      before: was.value.shown,
      after: is.value.shown,
      lines: changedLines(was.value.takeOff.lines, is.value.takeOff.lines),
      panelsOnlyBefore: without(was.value.shown.panels, is.value.shown.panels),
      panelsOnlyAfter: without(is.value.shown.panels, was.value.shown.panels),
      ...changedFindings(was.value.shown.findings, is.value.shown.findings),
    });
  },
});

function stateOf(
  states: readonly DesignRevision[],
  wanted: number,
  field: 'before' | 'after',
  components: readonly BookComponent[],
  rules: ReadonlyMap<string, RuleVersion>,
): Answer<{ shown: z.output<typeof state>; takeOff: TakeOff }> {
  const kept = states.find((each) => each.number === wanted);
  if (kept === undefined)
    return refuse('unknown-revision', `${states[0]?.code ?? 'The design'} has no saved state ${wanted}.`, {
      field,
      hint: `Maybe one of 1 to ${states.length}.`,
    });
  const system = systemOf(kept.system, components, rules);
  const taken = system.ok ? takeOff(system.value, kept.geometry) : system;
  if (!taken.ok) {
    const { code: reason, message, ...more } = taken.error;
    return refuse(reason, `${kept.code} as saved under number ${wanted}: ${message}`, more);
  }
  const { number, revision, name, hand, geometry } = kept;
  const shown = { number, revision, name, hand, ...shownTakeOff(taken.value, geometry.edges) };
  return answer({ shown, takeOff: taken.value });
}

type Drawn = z.output<typeof drawnPanel>;

/** Each panel of the one as often as the other lacks it. */
function without(these: readonly Drawn[], those: readonly Drawn[]): Drawn[] {
  const text = (panel: Drawn): string => [panel.panel, panel.onSide, panel.xNm, panel.yNm].join(' ');
  const left = new Map<string, number>();
  for (const panel of those) left.set(text(panel), (left.get(text(panel)) ?? 0) + 1);
  return these.filter((panel) => {
    const count = left.get(text(panel)) ?? 0;
    left.set(text(panel), count - 1);
    return count <= 0;
  });
}
