// When each crane works for the forms; a crane can have several stretches a day.
import type { ReactNode } from 'react';
import { EntryList, type WrongField } from './entry-list.tsx';
import type { PlanningEdit } from './use-planning.ts';

const week = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const dayChoices: readonly (readonly [string, string])[] = [
  ['1-5', 'Mon-Fri'],
  ['1-6', 'Mon-Sat'],
  ['1-7', 'every day'],
  ...week.map((name, index): readonly [string, string] => [`${index + 1}-${index + 1}`, name]),
];
const clock = /^([01]\d|2[0-3]):[0-5]\d$/u;

export function CranesPart({ edit }: { readonly edit: PlanningEdit }): ReactNode {
  const { settings, cranes: known } = edit.planning;
  const { cranes } = settings;
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const crane = (typed.crane ?? '').trim();
    if (crane === '') return { name: 'crane', message: 'Which crane?' };
    const [start, end] = [padded(typed.start), padded(typed.end)];
    if (!clock.test(start)) return { name: 'start', message: 'A time such as 07:00 is wanted.' };
    if (!clock.test(end)) return { name: 'end', message: 'A time such as 11:30 is wanted.' };
    if (end <= start) return { name: 'end', message: `It must be after ${start}.` };
    const minutesPerPick = Number(typed.minutes);
    if (!(minutesPerPick >= 1 && minutesPerPick <= 240))
      return { name: 'minutes', message: 'From 1 to 240 minutes.' };
    const [from = 1, to = 5] = (typed.days ?? '1-5').split('-').map(Number);
    const days = [1, 2, 3, 4, 5, 6, 7].filter((day) => day >= from && day <= to);
    const kept = await edit.set(
      { cranes: [...cranes, { crane, days, start, end, minutesPerPick }] },
      `hours of crane ${crane}`,
    );
    return kept ? null : { name: 'crane', message: 'It was not kept.' };
  };
  return (
    <EntryList
      title="Crane for the forms"
      note={`Other trades are booked day by day. Cranes with a chart: ${known.length === 0 ? 'none' : known.map(({ crane }) => crane).join(', ')}.`}
      lines={cranes.map((each, index) => ({
        key: `${index} ${each.crane} ${each.start}`,
        name: `${each.crane} from ${each.start}`,
        cells: [
          each.crane,
          each.days.map((day) => week[day - 1]).join(' '),
          `${each.start}-${each.end}`,
          `${each.minutesPerPick} min a pick`,
        ],
      }))}
      fields={[
        { name: 'crane', label: 'Crane', placeholder: known[0]?.crane ?? 'T1' },
        { name: 'days', label: 'Days', options: dayChoices },
        { name: 'start', label: 'From', placeholder: '07:00' },
        { name: 'end', label: 'To', placeholder: '15:30' },
        { name: 'minutes', label: 'Minutes a pick', placeholder: '12' },
      ]}
      onAdd={add}
      onTakeOut={(index) =>
        edit.set({ cranes: cranes.filter((_, at) => at !== index) }, 'take hours of a crane out')
      }
    />
  );
}

/** 7:00 is meant as 07:00. */
function padded(time = ''): string {
  const trimmed = time.trim();
  return /^\d:/u.test(trimmed) ? `0${trimmed}` : trimmed;
}
