// Refusals of a plan's input that one field alone cannot show: codes nobody knows, the same name twice,
// an end that is not after its beginning. The first thing found is answered, with its place.
import { refuse, type Refusal } from '../answer.ts';
import type { PlanInput } from './contract.ts';
import type { Instants } from './instants.ts';
import { checkShifts, minuteOfDay, type Shifts } from './shifts.ts';

const turnsAtMost = 4000;
const yearsAtMost = 20;
const msOfYears = yearsAtMost * 366 * 86_400_000;

export function checkPlanInput(input: PlanInput, instants: Instants): Refusal | undefined {
  const components = new Set(input.components.map(({ code }) => code));
  const designs = new Set(input.designs.map(({ code }) => code));
  return (
    checkSize(input) ??
    twice(
      input.components,
      ({ code }) => code,
      'component',
      (index) => `components[${index}].code`,
    ) ??
    checkStock(input, instants) ??
    twice(
      input.designs,
      ({ code }) => code,
      'design',
      (index) => `designs[${index}].code`,
    ) ??
    unknownPieces(input.designs, components, (index) => `designs[${index}]`) ??
    twice(
      input.turns,
      ({ id }) => id,
      'turn',
      (index) => `turns[${index}].id`,
    ) ??
    checkTurns(input, designs) ??
    checkStretches(input.turns, 'turns', instants) ??
    twice(
      input.loose ?? [],
      ({ id }) => id,
      'loose turn',
      (index) => `loose[${index}].id`,
    ) ??
    unknownPieces(input.loose ?? [], components, (index) => `loose[${index}]`) ??
    checkStretches(input.loose ?? [], 'loose', instants) ??
    checkTold(input) ??
    checkTurnaround(input, components, designs) ??
    (input.shifts === undefined
      ? undefined
      : (checkShifts(input.shifts) ?? checkWork(input, input.shifts))) ??
    checkSpan(input, instants)
  );
}

/** Every pair of turns is looked at, so their number is limited by memory. */
function checkSize({ turns }: PlanInput): Refusal | undefined {
  if (turns.length <= turnsAtMost) return undefined;
  return refuse(
    'too-many-turns',
    `The plan has ${turns.length} turns; at most ${turnsAtMost} can be planned at once.`,
    {
      field: 'turns',
      hint: 'Maybe the job can be planned in stretches of time.',
    },
  ).error;
}

function twice<T>(
  list: readonly T[],
  name: (entry: T) => string,
  what: string,
  field: (index: number) => string,
): Refusal | undefined {
  const seen = new Map<string, number>();
  for (const [index, entry] of list.entries()) {
    const first = seen.get(name(entry));
    if (first !== undefined) {
      return refuse(
        'named-twice',
        `The ${what} "${name(entry)}" stands in the list twice, as entry ${first + 1} and ${index + 1}.`,
        {
          field: field(index),
        },
      ).error;
    }
    seen.set(name(entry), index);
  }
  return undefined;
}

function unknownPieces(
  list: readonly { readonly pieces: Readonly<Record<string, number>> }[],
  components: ReadonlySet<string>,
  field: (index: number) => string,
): Refusal | undefined {
  for (const [index, { pieces }] of list.entries()) {
    for (const code of Object.keys(pieces)) {
      if (!components.has(code)) return unknown('component', code, `${field(index)}.pieces.${code}`);
    }
  }
  return undefined;
}

function unknown(what: string, code: string, field: string): Refusal {
  return refuse(`unknown-${what}`, `The ${what} "${code}" is not in the list of ${what}s.`, {
    field,
    hint: `Maybe the code is mistyped, or the ${what} has to be added to the list.`,
  }).error;
}

function checkStock(input: PlanInput, { unitsOf }: Instants): Refusal | undefined {
  for (const [index, { code, stock }] of input.components.entries()) {
    if (typeof stock === 'number') continue;
    const seen = new Set<number>();
    for (const [row, { from }] of stock.entries()) {
      const at = unitsOf(from);
      if (seen.has(at)) {
        return refuse('stock-given-twice', `The stock of "${code}" is given twice for ${from}.`, {
          field: `components[${index}].stock[${row}].from`,
        }).error;
      }
      seen.add(at);
    }
  }
  return undefined;
}

function checkTurns(input: PlanInput, designs: ReadonlySet<string>): Refusal | undefined {
  for (const [index, { design }] of input.turns.entries()) {
    if (!designs.has(design)) return unknown('design', design, `turns[${index}].design`);
  }
  return undefined;
}

function checkTold(input: PlanInput): Refusal | undefined {
  const turns = new Set(input.turns.map(({ id }) => id));
  for (const [index, told] of (input.told ?? []).entries()) {
    const named = told.kind === 'follow' ? [told.from, told.to] : [told.turn];
    const missing = named.find((id) => !turns.has(id));
    if (missing !== undefined) return unknown('turn', missing, `told[${index}]`);
  }
  return undefined;
}

function checkStretches(
  list: readonly { readonly id: string; readonly from: string; readonly to: string }[],
  path: string,
  { unitsOf }: Instants,
): Refusal | undefined {
  for (const [index, { id, from, to }] of list.entries()) {
    if (unitsOf(from) >= unitsOf(to)) {
      return refuse('ends-before-it-begins', `"${id}" ends at ${to}, not after it begins at ${from}.`, {
        field: `${path}[${index}].to`,
        hint: 'Maybe from and to are swapped.',
      }).error;
    }
  }
  return undefined;
}

function checkTurnaround(
  input: PlanInput,
  components: ReadonlySet<string>,
  designs: ReadonlySet<string>,
): Refusal | undefined {
  const { regangPerPieceH, regangH = [] } = input.turnaround;
  if (typeof regangPerPieceH !== 'number') {
    for (const code of Object.keys(regangPerPieceH)) {
      if (!components.has(code)) return unknown('component', code, `turnaround.regangPerPieceH.${code}`);
    }
  }
  for (const [index, { from, to }] of regangH.entries()) {
    if (!designs.has(from)) return unknown('design', from, `turnaround.regangH[${index}].from`);
    if (!designs.has(to)) return unknown('design', to, `turnaround.regangH[${index}].to`);
  }
  return twice(
    regangH,
    ({ from, to }) => `${from} to ${to}`,
    're-gang',
    (index) => `turnaround.regangH[${index}]`,
  );
}

/** Work must come to an end within the years that a calendar is laid out for. */
function checkWork(input: PlanInput, shifts: Shifts): Refusal | undefined {
  const hoursPerWeek =
    ((minuteOfDay(shifts.end) - minuteOfDay(shifts.start)) / 60) * new Set(shifts.days).size;
  for (const [index, { code, assembleH, breakDownH }] of input.designs.entries()) {
    if (Math.max(assembleH, breakDownH) > hoursPerWeek * 52 * yearsAtMost) {
      return refuse(
        'work-too-long',
        `The work on "${code}" takes more than ${yearsAtMost} years by this calendar.`,
        {
          field: `designs[${index}]`,
        },
      ).error;
    }
  }
  return undefined;
}

function checkSpan(input: PlanInput, { scale, unitsOf }: Instants): Refusal | undefined {
  let [first, last] = [Infinity, -Infinity];
  for (const { id, from, to } of [...input.turns, ...(input.loose ?? [])]) {
    first = Math.min(first, unitsOf(from));
    last = Math.max(last, unitsOf(to));
    if (last - first > msOfYears * scale.unitsPerMs) {
      return refuse('span-too-long', `With "${id}" the plan spans more than ${yearsAtMost} years.`, {
        field: 'turns',
        hint: 'Maybe a year is mistyped.',
      }).error;
    }
  }
  return undefined;
}
