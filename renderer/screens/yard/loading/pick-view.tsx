// A pick list: for a gang, a pour or a note; place after place as one walks, what is short before all else, and at the
// side what was given in the end.
import { type ReactNode, useMemo } from 'react';
import { Link } from 'wouter';
import { readPickId } from '../../../../core/yard/pick-id.ts';
import { type Output, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { DataTable } from '../../../parts/data-table.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { Empty, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { useUnits } from '../../../parts/units.tsx';
import { SidePane } from '../side-pane.tsx';
import { GivenForm } from './given-form.tsx';
import { comingWords, conditionAt, pickInput } from './loading-words.ts';
import { lineKey, linesOf, pickColumns } from './pick-columns.tsx';
import { PickFor } from './pick-for.tsx';

export type PickList = Output<'picklist.read'>;

export function PickView(): ReactNode {
  const [query, change] = useAddressQuery();
  const id = query.get('for');
  const giving = query.get('given') !== null;
  const asked = useMemo(() => (id === null ? null : readPickId(id)), [id]);
  const input = asked?.ok === true ? pickInput(asked.value) : null;
  const list = useCore('picklist.read', input ?? {}, { enabled: input !== null });
  const data = input === null || list.isPlaceholderData ? undefined : list.data;
  return (
    <>
      <div className="pane grow yard-main">
        <PickFor
          asked={asked?.ok === true ? asked.value : null}
          onAsked={(next) => change({ for: next, given: null })}
        />
        {asked?.ok === false ? <RefusalNote error={new Error(asked.error.message)} /> : null}
        {input !== null && list.error !== null ? <RefusalNote error={list.error} /> : null}
        {input !== null && list.error === null && data === undefined ? (
          <Waiting what="Looking through the racks …" />
        ) : null}
        {id === null ? (
          <Empty title="What is to be fetched?">
            <p>
              A pick list says what to take from which place, the heaviest first: for a gang that is to be
              built, for a pour as its plan has it, or for a note. Choose one above.
            </p>
          </Empty>
        ) : null}
        {data === undefined ? null : (
          <Picked list={data} giving={giving} onGiving={() => change({ given: giving ? null : 'open' })} />
        )}
      </div>
      {giving && data !== undefined ? (
        <SidePane
          title={`Given for ${data.code}`}
          className="gang-side"
          onClose={() => change({ given: null })}
        >
          <GivenForm key={data.id} list={data} />
        </SidePane>
      ) : null}
    </>
  );
}

function Picked(props: {
  readonly list: PickList;
  readonly giving: boolean;
  readonly onGiving: () => void;
}): ReactNode {
  const { list } = props;
  const units = useUnits();
  const words = useTimeWords();
  const columns = useMemo(() => pickColumns(units), [units]);
  const rows = useMemo(() => linesOf(list), [list]);
  const needed = list.neededAt === null ? '' : `, needed ${words.full(list.neededAt)}`;
  return (
    <>
      <div className="pick-facts">
        <p>
          <b>{list.code}</b> {list.name}
          {needed}: {list.pieces} pieces, {units.weight(list.weightGrams)}.{' '}
          <span className="soft">Stock of {words.full(list.at)}.</span>
        </p>
        <p className="pick-acts">
          <Link href={paperSheetAddress('picklist', list.id)}>Print the pick list</Link>
          <button type="button" aria-expanded={props.giving} onClick={props.onGiving}>
            Enter what was given
          </button>
        </p>
      </div>
      <Short list={list} />
      <DataTable
        caption={`Pick list for ${list.code}`}
        columns={columns}
        rows={rows}
        rowKey={lineKey}
        filterLabel="Filter"
        empty="Nothing is to be picked."
      />
      <Beside list={list} />
    </>
  );
}

function Short({ list }: { readonly list: PickList }): ReactNode {
  if (list.short.length === 0) return null;
  return (
    <section className="pick-short" aria-label="Short">
      <h2>
        Short: {list.short.length} {list.short.length === 1 ? 'component' : 'components'}
      </h2>
      <ul>
        {list.short.map((line) => (
          <li key={`${line.component} ${line.owner ?? ''}`}>
            <b className="short-word">
              {line.missing} {line.component}
            </b>{' '}
            {line.name}
            {line.owner === null ? '' : ` of ${line.owner}`}: {line.wanted} wanted, {line.there} there.{' '}
            {line.elsewhere.length === 0 ? (
              <span className="soft">None lies elsewhere.</span>
            ) : (
              <span className="soft">Not taken: {line.elsewhere.map(conditionAt).join(', ')}.</span>
            )}
            {line.kind === 'stiffening-rail' ? ' No rail of another length without the designer.' : ''}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Beside({ list }: { readonly list: PickList }): ReactNode {
  const hooks = list.hooks.map(({ quantity, component, name }) => `${quantity} ${component} ${name}`);
  if (hooks.length === 0 && list.coming.length === 0) return null;
  return (
    <section className="pick-beside" aria-label="Not in the list">
      {hooks.length === 0 ? null : <p>Flies with the crane, in date by its number: {hooks.join(', ')}.</p>}
      {list.coming.length === 0 ? null : (
        <ul>
          {list.coming.map((gang) => (
            <li key={gang.turn}>{comingWords(gang)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
