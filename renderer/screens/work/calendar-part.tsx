// Exceptions of the calendar on one day, each by one press: lost to weather, a holiday, a Saturday, a longer day, a night.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useCommand, useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { dateWords } from '../../parts/time-words.ts';
import { useUndo } from '../../parts/undo.tsx';
import { type Exception, exceptionWords, offered } from './calendar-words.ts';
import type { WorkDay } from './work-words.ts';

type Kept = Output<'calendar.list'>['exceptions'][number];

export function CalendarPart(props: { readonly day: WorkDay; readonly readOnly: boolean }): ReactNode {
  const { day, readOnly } = props;
  const job = useJob().code;
  const list = useCore('calendar.list', { job });
  const set = useCommand('calendar.set');
  const remove = useCommand('calendar.remove');
  const { remember } = useUndo();
  const enter = async (exception: Exception): Promise<void> => {
    const { id } = await set.mutateAsync({ job, exception });
    remember({
      words: `${dateWords(day.date)}: ${exceptionWords(exception)}`,
      undo: () => remove.mutateAsync({ job, id }),
      redo: () => set.mutateAsync({ job, exception }),
    });
  };
  const take = async ({ id, exception }: Kept): Promise<void> => {
    let there = id;
    await remove.mutateAsync({ job, id });
    remember({
      words: `${dateWords(day.date)}: as usual again`,
      undo: async () => {
        ({ id: there } = await set.mutateAsync({ job, exception }));
      },
      redo: () => remove.mutateAsync({ job, id: there }),
    });
  };
  const own = list.data?.exceptions.filter(({ exception }) => exception.date === day.date) ?? [];
  const error = set.error ?? remove.error;
  return (
    <section className="pane-part" aria-label="Calendar">
      <h3>Calendar</h3>
      {error === null ? null : <RefusalNote error={error} />}
      <ul className="work-lines">
        {own.map((kept) => (
          <li key={kept.id}>
            <span>{exceptionWords(kept.exception)}</span>
            <span className="soft">{kept.who ?? ''}</span>
            <Button
              className="quiet"
              isDisabled={readOnly || remove.isPending}
              aria-label={`As usual again: ${exceptionWords(kept.exception)}`}
              onPress={() => void take(kept).catch(() => undefined)}
            >
              As usual again
            </Button>
          </li>
        ))}
      </ul>
      {list.data === undefined ? null : (
        <p className="gang-acts">
          {offered(day, list.data.shifts).map(({ name, exception }) => (
            <Button
              key={name}
              isDisabled={readOnly || set.isPending}
              onPress={() => void enter(exception).catch(() => undefined)}
            >
              {name}
            </Button>
          ))}
        </p>
      )}
    </section>
  );
}
