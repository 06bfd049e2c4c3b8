// What a job would follow from with changes that nobody has carried out yet: the same source, other entries. The plan of
// the changed source against the plan of the source is what the changes would do.
import { answer, type Answer, never, refuse } from '../answer.ts';
import type { FixedChoice } from '../plan/choices.ts';
import { movePour, pourAtTimes, pourFinishingAt } from '../plan/move-pour.ts';
import type { PlanChange, PlannedStock } from '../plan/plan-changes.ts';
import type { Pour, PourSide } from '../plan/pours.ts';
import type { JobPlanning, PourFacts } from './job-planning.ts';
import { type JobSource, workingJob } from './job-source.ts';
import { unknownPour } from './unknown.ts';

/** In the order given; refused at the first that speaks of something that is not there. */
export function changedSource(source: JobSource, changes: readonly PlanChange[]): Answer<JobSource> {
  let changed = source;
  for (const [index, change] of changes.entries()) {
    const next = withChange(changed, change, `changes[${index}]`);
    if (!next.ok) return next;
    changed = next.value;
  }
  return answer(changed);
}

function withChange(source: JobSource, change: PlanChange, field: string): Answer<JobSource> {
  const job = workingJob(source.job, source.planning);
  switch (change.kind) {
    case 'move':
      return withPour(source, change.pour, field, (pour) => answer(movePour(pour, change.workingDays, job)));
    case 'drop':
      return dropped(source, change.pour, field);
    case 'stock':
      return answer(withStock(source, [change.entry]));
    case 'set-of-forms':
      return withSet(source, change, field);
    case 'delivery':
      return withDelivery(source, change, field);
    case 'fix':
      return answer(withFixed(source, [...without(source.planning.fixed, change.choice), change.choice]));
    case 'unfix':
      return answer(withFixed(source, without(source.planning.fixed, change.choice)));
    case 'strip':
      return otherStrip(source, change, field);
    case 'design':
      return withPour(source, change.pour, field, (pour) => otherDesign(source, pour, change, field));
    case 'calendar':
      return answer(withPlanning(source, { exceptions: [...source.planning.exceptions, change.exception] }));
    case 'crane':
      return answer(
        withPlanning(source, { craneBookings: [...source.planning.craneBookings, change.booking] }),
      );
    case 'date': {
      const dated = withPour(source, change.pour, field, (pour) =>
        answer(pourFinishingAt(pour, change.finishAt, job)),
      );
      return dated.ok ? answer(withFacts(dated.value, change.pour, { dateOpen: false })) : dated;
    }
    case 'pour-times':
      return withPour(source, change.pour, field, (pour) => answer(pourAtTimes(pour, change)));
    case 'hold': {
      if (!source.pours.some(({ code }) => code === change.pour))
        return unknownPour(change.pour, source.job.code, field);
      const hold = change.hold === null ? null : { ...change.hold, since: source.yard.now };
      return answer(withFacts(source, change.pour, { hold }));
    }
    default:
      return never(change);
  }
}

function withPour(
  source: JobSource,
  code: string,
  field: string,
  by: (pour: Pour) => Answer<Pour>,
): Answer<JobSource> {
  const pour = source.pours.find((each) => each.code === code);
  if (pour === undefined) return unknownPour(code, source.job.code, field);
  const changed = by(pour);
  if (!changed.ok) return changed;
  return answer({
    ...source,
    pours: source.pours.map((each) => (each.code === code ? changed.value : each)),
  });
}

function otherStrip(
  source: JobSource,
  { pour: code, stripMinimumH, approvedBy }: Extract<PlanChange, { kind: 'strip' }>,
  field: string,
): Answer<JobSource> {
  const hoursBefore = source.pours.find((each) => each.code === code)?.stripMinimumH ?? 0;
  const changed = withPour(source, code, field, (pour) => answer({ ...pour, stripMinimumH }));
  return changed.ok
    ? answer(withFacts(changed.value, code, { stripApproval: { approvedBy, hoursBefore } }))
    : changed;
}

/** What comes after it comes after what it came after. */
function dropped(source: JobSource, code: string, field: string): Answer<JobSource> {
  const gone = source.pours.find((each) => each.code === code);
  if (gone === undefined) return unknownPour(code, source.job.code, field);
  const pours = source.pours.flatMap((pour) => {
    if (pour.code === code) return [];
    if (!pour.after.includes(code)) return [pour];
    const after = pour.after.flatMap((each) => (each === code ? gone.after : [each]));
    return [{ ...pour, after: [...new Set(after)] }];
  });
  return answer({ ...source, pours });
}

function otherDesign(
  { designs }: JobSource,
  pour: Pour,
  change: Extract<PlanChange, { kind: 'design' }>,
  field: string,
): Answer<Pour> {
  if (!designs.has(change.design))
    return refuse('unknown-design', `There is no design ${change.design}.`, { field: `${field}.design` });
  const replaced = (side: PourSide): PourSide =>
    side.side === change.side
      ? {
          ...side,
          gangs: side.gangs.map((gang, index) =>
            index + 1 === change.position ? { ...gang, design: change.design } : gang,
          ),
        }
      : side;
  const side = pour.sides.find((each) => each.side === change.side);
  if (side === undefined || change.position > side.gangs.length)
    return refuse(
      'unknown-gang',
      `Side ${change.side} of pour ${pour.code} has no gang ${change.position}.`,
      { field: `${field}.position` },
    );
  return answer({ ...pour, sides: [replaced(pour.sides[0]), replaced(pour.sides[1])] });
}

function withSet(
  source: JobSource,
  change: Extract<PlanChange, { kind: 'set-of-forms' }>,
  field: string,
): Answer<JobSource> {
  const sums = new Map<string, number>();
  for (const { design, quantity } of change.gangs) {
    const pieces = source.designs.get(design)?.pieces;
    if (pieces === undefined)
      return refuse('unknown-design', `There is no design ${design}.`, { field: `${field}.gangs` });
    for (const [component, each] of Object.entries(pieces))
      sums.set(component, (sums.get(component) ?? 0) + each * quantity);
  }
  const entries = [...sums].map(([component, quantity]): PlannedStock => ({
    kind: 'set-of-forms',
    component,
    quantity,
    from: change.from,
    to: null,
    costCents: 0,
    source: null,
    remark: null,
  }));
  return answer(withStock(source, entries));
}

function withDelivery(
  source: JobSource,
  change: Extract<PlanChange, { kind: 'delivery' }>,
  field: string,
): Answer<JobSource> {
  const { notes } = source.yard;
  if (!notes.some(({ id }) => id === change.note))
    return refuse('unknown-note', `There is no draft note ${change.note}.`, { field: `${field}.note` });
  return answer({
    ...source,
    yard: {
      ...source.yard,
      notes: notes.map((note) =>
        note.id === change.note ? { ...note, expectedAt: change.expectedAt } : note,
      ),
    },
  });
}

function withStock(source: JobSource, entries: readonly PlannedStock[]): JobSource {
  return withPlanning(source, { plannedStock: [...source.planning.plannedStock, ...entries] });
}

function withFixed(source: JobSource, fixed: readonly FixedChoice[]): JobSource {
  return withPlanning(source, { fixed });
}

function without(fixed: readonly FixedChoice[], choice: FixedChoice): readonly FixedChoice[] {
  const key = JSON.stringify(choice);
  return fixed.filter((each) => JSON.stringify(each) !== key);
}

function withFacts(source: JobSource, pour: string, part: Partial<PourFacts>): JobSource {
  const facts = { ...noPourFacts, ...source.planning.pourFacts.get(pour), ...part };
  return withPlanning(source, { pourFacts: new Map([...source.planning.pourFacts, [pour, facts]]) });
}

function withPlanning(source: JobSource, part: Partial<JobPlanning>): JobSource {
  return { ...source, planning: { ...source.planning, ...part } };
}

/** Of a pour of which nothing more was entered. */
export const noPourFacts: PourFacts = {
  dateOpen: false,
  hold: null,
  reach: null,
  standsOn: null,
  laidDown: null,
  stripApproval: null,
};
