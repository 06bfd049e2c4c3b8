// What is entered of pours beside their dates and gangs: a hold, how far from the crane, on which storey they stand.
import { type ReactNode, useMemo } from 'react';
import { type Column, DataTable } from '../../parts/data-table.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { PourFactsPane } from './pour-facts-pane.tsx';
import type { Work } from './work-words.ts';

type Row = Work['pours'][number];

export function PoursView(props: {
  readonly work: Work;
  readonly words: TimeWords;
  readonly readOnly: boolean;
  readonly chosen: string | null;
  readonly onChoose: (pour: string | null) => void;
}): ReactNode {
  const { work, words, chosen, onChoose } = props;
  const { length } = useUnits();
  const columns = useMemo(() => columnsOf(words, length), [words, length]);
  return (
    <div className="screen-body">
      <div className="pane grow">
        <DataTable
          caption="Holds, reach and storeys of pours"
          columns={columns}
          rows={work.pours}
          rowKey={(row) => row.pour}
          selectedKey={chosen}
          onSelect={(row) => onChoose(row.pour === chosen ? null : row.pour)}
          filterLabel="Filter"
        />
      </div>
      {chosen === null ? null : (
        <PourFactsPane
          key={chosen}
          pour={chosen}
          words={words}
          readOnly={props.readOnly}
          onClose={() => onChoose(null)}
        />
      )}
    </div>
  );
}

function columnsOf(words: TimeWords, length: (nm: number) => string): readonly Column<Row>[] {
  const hold = ({ facts }: Row): string => {
    const held = facts?.hold ?? null;
    if (held === null) return '';
    return `${held.reason}, ${held.until === null ? 'nobody knows until when' : `until ${words.full(held.until)}`}`;
  };
  const reach = ({ facts }: Row): string => {
    const entered = facts?.reach ?? null;
    return entered === null ? '' : `${length(entered.radiusNm)} from ${entered.crane}`;
  };
  const stands = ({ facts }: Row): string => {
    const below = facts?.standsOn ?? null;
    return below === null ? '' : `${below.pour}, strong after ${below.strengthH} h`;
  };
  return [
    { id: 'pour', header: 'Pour', value: (row) => row.pour, width: 80 },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 230 },
    { id: 'hold', header: 'Hold', value: hold, width: 260 },
    { id: 'reach', header: 'Crane', value: reach, width: 150 },
    { id: 'stands', header: 'Stands on', value: stands, width: 200 },
  ];
}
