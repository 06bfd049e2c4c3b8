// Words of strip tickets that several parts of the screen use.
import type { Booking, TicketRow } from './asked.ts';

export const stateWords: Readonly<Record<TicketRow['state'], string>> = {
  open: 'open',
  booked: 'booked',
  dropped: 'dropped',
};

export const gangStateWords: Readonly<Record<string, string>> = {
  assembled: 'assembled',
  standing: 'standing',
  stripped: 'stripped',
  'standing-by': 'standing by',
  'broken-down': 'broken down',
};

export function piecesWords(quantity: number): string {
  return `${quantity} ${quantity === 1 ? 'piece' : 'pieces'}`;
}

/** "4 P836, 22 LK" */
export function componentWords(components: Booking['moves'][number]['components']): string {
  return components.map(({ component, quantity }) => `${quantity} ${component}`).join(', ');
}
