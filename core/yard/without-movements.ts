// The stock as it would be without some of its movements: a count once booked is shown against what was booked before
// it, and not against what it booked itself.
import type { Movement } from './movement.ts';
import { type StockLine, stockKey } from './quantities.ts';

export function withoutMovements(
  stock: readonly StockLine[],
  movements: readonly Movement[],
): readonly StockLine[] {
  const lines = new Map(
    stock.map((line) => [stockKey(line.component, line.owner, line.location, line.condition), line]),
  );
  const add = (movement: Movement, end: 'from' | 'to'): void => {
    const { component, owner } = movement;
    const location = movement[end];
    const condition = end === 'from' ? movement.condition : movement.conditionAfter;
    const key = stockKey(component, owner, location, condition);
    const none = { component, owner, location, condition, quantity: 0, basis: null, basisDate: null };
    const line = lines.get(key) ?? none;
    lines.set(key, {
      ...line,
      quantity: line.quantity + (end === 'from' ? movement.quantity : -movement.quantity),
    });
  };
  for (const movement of movements) {
    add(movement, 'from');
    add(movement, 'to');
  }
  return [...lines.values()].filter(({ quantity }) => quantity !== 0);
}
