// A row a day: what crew, crane and pads are asked for and what there is of them. A chosen day opens beside.
import { type ReactNode, useMemo } from 'react';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { DayPane } from './day-pane.tsx';
import { craneMinutes, ofThere, tooMuch, type Work, type WorkDay } from './work-words.ts';

export function DaysView(props: {
  readonly work: Work;
  readonly words: TimeWords;
  readonly readOnly: boolean;
  readonly chosen: string | null;
  readonly onChoose: (date: string | null) => void;
}): ReactNode {
  const { work, words, chosen, onChoose } = props;
  const columns = useMemo(() => columnsOf(words), [words]);
  const rows = useMemo(
    () => work.days.filter((day) => day.working || day.crew.needed > 0 || isWeekend(day)),
    [work],
  );
  const day = work.days.find(({ date }) => date === chosen);
  return (
    <div className="screen-body">
      <div className="pane grow">
        <DataTable
          caption="Crew, crane and pads by day"
          columns={columns}
          rows={rows}
          rowKey={(row) => row.date}
          selectedKey={chosen}
          onSelect={(row) => onChoose(row.date === chosen ? null : row.date)}
          sortBy="date"
          filterLabel="Filter"
        />
      </div>
      {day === undefined ? null : (
        <DayPane
          key={day.date}
          work={work}
          day={day}
          words={words}
          readOnly={props.readOnly}
          onClose={() => onChoose(null)}
        />
      )}
    </div>
  );
}

/** Saturdays stay in the list although nobody works, so that one can be worked. */
function isWeekend({ date }: WorkDay): boolean {
  return new Date(`${date}T12:00:00Z`).getUTCDay() === 6;
}

function columnsOf(words: TimeWords): readonly Column<WorkDay>[] {
  return [
    { id: 'date', header: 'Day', value: (row) => row.date, show: (row) => dateWords(row.date), text: (row) => dateWords(row.date), width: 110 },
    { id: 'shift', header: 'Shift', value: (row) => shiftWords(row, words), width: 150 },
    { id: 'crew', header: 'Crew, hours', value: (row) => row.crew.needed - row.crew.there, text: (row) => ofThere(row.crew.needed, row.crew.there), show: (row) => ofThere(row.crew.needed, row.crew.there), numeric: true, width: 120 },
    { id: 'crane', header: 'Crane, minutes', value: (row) => craneMinutes(row)?.needed ?? -1, text: craneText, show: craneText, numeric: true, width: 130 },
    { id: 'pads', header: 'Gangs on pads', value: (row) => row.pads?.needed ?? -1, text: padText, show: padText, numeric: true, width: 120 },
    { id: 'over', header: 'Too much', value: tooMuch, show: (row) => <span className="short-word">{tooMuch(row)}</span>, width: 140 },
  ]; // prettier-ignore
}

function shiftWords({ shifts }: WorkDay, words: TimeWords): string {
  if (shifts.length === 0) return 'nobody works';
  return shifts.map(({ from, to }) => `${words.time(from)}-${words.time(to)}`).join(', ');
}

function craneText(row: WorkDay): string {
  const minutes = craneMinutes(row);
  return minutes === null ? 'not set' : ofThere(minutes.needed, minutes.there);
}

function padText({ pads }: WorkDay): string {
  return pads === null ? 'not set' : ofThere(pads.needed, pads.there);
}
