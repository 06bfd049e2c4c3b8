// Counted less booked, line by line, at its side what stands behind one line, under it the booking of all.
import { type ReactNode, useMemo, useRef } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { DataTable } from '../../../parts/data-table.tsx';
import { useJob } from '../../../parts/job.tsx';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { useUnits } from '../../../parts/units.tsx';
import { BookBar } from './book-bar.tsx';
import { accuracyWords, type DifferenceLine } from './count-words.ts';
import { differenceColumns } from './difference-columns.tsx';
import { DifferencePane } from './difference-pane.tsx';
import { beginLine, type ExplainDraft, isExplained, lineKeyOf } from './explain-draft.ts';
import { useKeptTyping } from './kept-typing.ts';

const nothing: ExplainDraft = {};
const which = [
  ['differing', 'What differs'],
  ['all', 'Every line'],
] as const;

export function DifferencesView(props: { readonly id: string }): ReactNode {
  const { id } = props;
  const job = useJob();
  const list = useCore('count.differences', { count: id });
  const hire = useCore('shortfall.list', { job: job.code });
  const { money: format } = useUnits();
  const [query, change] = useAddressQuery();
  const [draft, edit] = useKeptTyping(`${id} explained`, nothing);
  const body = useRef<HTMLDivElement>(null);
  const currency = hire.data?.currency ?? 'USD';
  const isBooked = list.data?.result !== null && list.data?.result !== undefined;
  const columns = useMemo(
    () =>
      differenceColumns(
        (cents) => format(cents, currency),
        (line) => isBooked || isExplained(line, draft[lineKeyOf(line)] ?? beginLine(line)),
      ),
    [format, currency, draft, isBooked],
  );
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what="Holding the figures against the book …" />;
  const { lines, waiting, accuracy, shortCents, overCents, withoutValue } = list.data;
  const shown = query.get('lines') === 'all' ? 'all' : 'differing';
  const rows = shown === 'all' ? lines : lines.filter(differs);
  const chosen = lines.find((line) => lineKeyOf(line) === query.get('line'));
  const money = (cents: number): string => format(cents, currency);
  const close = (): void => {
    body.current?.querySelector<HTMLElement>('tr.selected')?.focus();
    change({ line: null });
  };
  return (
    <>
      <div className="pane grow yard-main" ref={body}>
        <p className="counts-accuracy">
          <b>{accuracyWords(accuracy)}</b>
          <span className="soft">
            {' '}
            · short {money(shortCents)}, over {money(overCents)}, never netted
            {withoutValue > 0 ? ` · ${withoutValue} differing without a value entered` : ''}
            {waiting > 0 ? ` · ${waiting} not counted yet` : ''}
          </span>
        </p>
        {rows.length === 0 ? (
          <Empty title={waiting > 0 ? 'Nothing to compare yet' : 'All as booked'}>
            <p>
              {waiting > 0
                ? 'What is entered stands here against what was booked at that moment.'
                : 'Every line was found as the book has it. Book the count to keep that it was counted.'}
            </p>
            {lines.length > 0 ? (
              <button type="button" onClick={() => change({ lines: 'all' })}>
                Show every line
              </button>
            ) : null}
          </Empty>
        ) : (
          <DataTable
            caption="Differences"
            columns={columns}
            rows={rows}
            rowKey={lineKeyOf}
            selectedKey={chosen === undefined ? null : lineKeyOf(chosen)}
            onSelect={(line) => change({ line: lineKeyOf(line) })}
            sortBy="line"
            filterLabel="Filter"
            tools={
              <Choice
                label="Which lines"
                value={shown}
                options={which}
                onChange={(next) => change({ lines: next === 'all' ? 'all' : null })}
              />
            }
          />
        )}
        <BookBar id={id} list={list.data} draft={draft} />
      </div>
      {chosen === undefined ? null : (
        <DifferencePane
          key={lineKeyOf(chosen)}
          line={chosen}
          booked={list.data.result?.lines.find((line) => lineKeyOf(line) === lineKeyOf(chosen))}
          money={money}
          draft={draft[lineKeyOf(chosen)] ?? beginLine(chosen)}
          onDraft={(by) =>
            edit((old) => ({ ...old, [lineKeyOf(chosen)]: by(old[lineKeyOf(chosen)] ?? beginLine(chosen)) }))
          }
          onRecount={(counter) =>
            change(
              { do: 'enter', line: lineKeyOf(chosen), counter: counter === 2 ? '2' : null },
              { step: true },
            )
          }
          onClose={close}
        />
      )}
    </>
  );
}

function differs(line: DifferenceLine): boolean {
  return (
    line.state === 'differ' ||
    (line.state === 'counted' && (line.difference !== 0 || line.conditionMoves.length > 0 || line.unclear))
  );
}
