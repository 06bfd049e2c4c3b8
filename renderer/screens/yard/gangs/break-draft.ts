// The quantities of a gang that is broken down, by component and the condition they are found in: typed as text, and
// read into lines that together are what is booked to it. What is not told apart is in the first condition.
import { type Answer, answer, refuse } from '../../../../core/answer.ts';

export interface Booked {
  readonly component: string;
  readonly quantity: number;
}

export interface FoundLine<C extends string> {
  readonly component: string;
  readonly condition: C;
  readonly quantity: number;
}

/** Sums by component, in the order of the content. */
export function bookedOf(content: readonly Booked[]): readonly Booked[] {
  const sums = new Map<string, number>();
  for (const { component, quantity } of content) sums.set(component, (sums.get(component) ?? 0) + quantity);
  return [...sums].map(([component, quantity]) => ({ component, quantity }));
}

/**
 * @param typed text by component and condition, of the conditions but the first
 * Codes: not-a-number, more-than-booked; the field is the component.
 */
export function readFound<C extends string>(
  booked: readonly Booked[],
  rest: C,
  others: readonly C[],
  typed: Readonly<Record<string, string>>,
): Answer<readonly FoundLine<C>[]> {
  const lines: FoundLine<C>[] = [];
  for (const { component, quantity } of booked) {
    let left = quantity;
    for (const condition of others) {
      const text = (typed[foundKey(component, condition)] ?? '').trim();
      if (text === '' || text === '0') continue;
      if (!/^\d{1,9}$/u.test(text))
        return refuse('not-a-number', `"${text}" of ${component} is not a whole number of pieces.`, {
          field: component,
        });
      left -= Number(text);
      lines.push({ component, condition, quantity: Number(text) });
    }
    if (left < 0)
      return refuse(
        'more-than-booked',
        `${quantity - left} of ${component} are more than the ${quantity} in it.`,
        {
          field: component,
        },
      );
    if (left > 0) lines.push({ component, condition: rest, quantity: left });
  }
  return answer(lines);
}

export function foundKey(component: string, condition: string): string {
  return `${component} ${condition}`;
}
