// What changed components cannot be, whatever the rule tables say: all of it, each at its place.
import type { Refusal } from '../answer.ts';
import type { BookComponent } from '../book/book.ts';
import { catalogueProblems } from '../catalogue/system.ts';

/** @param stored the catalogue of the book, in which every code stands once whatever its system */
export function changedProblems(
  system: string,
  changed: readonly BookComponent[],
  stored: readonly BookComponent[],
): readonly Refusal[] {
  const known = new Map(stored.map((component) => [component.code, component]));
  return [
    ...catalogueProblems(changed),
    ...changed.flatMap((component) => [
      ...takenCode(system, component, known.get(component.code)),
      ...figureProblems(component),
    ]),
  ];
}

/** A code typed anew for a piece of this system must not quietly turn another system's piece into it. */
function takenCode(
  system: string,
  { code }: BookComponent,
  before: BookComponent | undefined,
): readonly Refusal[] {
  if (before === undefined || before.system === null || before.system === system) return [];
  return [
    {
      code: 'component-of-another-system',
      message: `The code ${code} stands for ${before.name} of the system ${before.system}.`,
      field: `components.${code}`,
      hint: 'Maybe another code.',
    },
  ];
}

function figureProblems(component: BookComponent): readonly Refusal[] {
  const { code, kind, weightGrams, hirePerDayCents } = component;
  const field = `components.${code}`;
  const problems: Refusal[] = [];
  if (weightGrams === 0)
    problems.push({
      code: 'weight-zero',
      message: `${code} weighs nothing: every gang with it would be counted too light.`,
      field: `${field}.weight`,
    });
  // Of a panel without a size more is said elsewhere.
  const sizes = kind === 'panel' ? (['lengthNm'] as const) : (['widthNm', 'heightNm', 'lengthNm'] as const);
  for (const size of sizes) {
    const lengthNm = component[size];
    if (lengthNm === undefined || lengthNm > 0) continue;
    const name = size.replace('Nm', '');
    problems.push({
      code: 'size-not-positive',
      message: `The ${name} of ${code} must be over zero.`,
      field: `${field}.${name}`,
    });
  }
  if (hirePerDayCents !== null && hirePerDayCents < 0)
    problems.push({
      code: 'hire-negative',
      message: `The hire of ${code} cannot be under zero.`,
      field: `${field}.hirePerDay`,
    });
  return problems;
}
