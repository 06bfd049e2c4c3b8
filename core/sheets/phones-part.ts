// Whom to call, as the job has entered it.
import { of, type SheetElement } from './node.ts';

export interface Phone {
  readonly who: string;
  readonly phone: string;
}

export function phonesPart(phones: readonly Phone[]): readonly SheetElement[] {
  if (phones.length === 0) return [];
  return [
    of(
      'section',
      'part phones',
      of('h2', 'part-name', 'Whom to call'),
      of(
        'ul',
        'phone-list',
        ...phones.map(({ who, phone }) => of('li', 'phone', `${who} `, of('strong', 'phone-number', phone))),
      ),
    ),
  ];
}

/** "Steel crew, 555 0101": the number where one is entered for that name. */
export function withPhone(who: string, phones: readonly Phone[]): string {
  const number = phones.find((each) => each.who.toLowerCase() === who.toLowerCase())?.phone;
  return number === undefined ? who : `${who}, ${number}`;
}
