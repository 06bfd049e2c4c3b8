// Starting a count: a spot check of the lines that most deserve it, or everything at places; blind or not, by one or
// two counters.
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { SidePane } from '../side-pane.tsx';
import { lineReasonWords } from './count-words.ts';

const kinds = [
  ['spot', 'Spot check'],
  ['location', 'Whole places'],
] as const;

export function StartPane(props: { readonly onClose: () => void }): ReactNode {
  const [query, change] = useAddressQuery();
  const settings = useCore('yard.settings.read', {});
  const kind = query.get('start') === 'location' ? 'location' : 'spot';
  return (
    <SidePane title="Start a count" className="count-start" onClose={props.onClose}>
      <div className="count-start-kind">
        <Choice label="Kind of count" value={kind} options={kinds} onChange={(start) => change({ start })} />
      </div>
      {settings.data === undefined ? (
        <Waiting what="Reading the settings …" />
      ) : (
        <StartForm key={kind} kind={kind} settings={settings.data.settings} />
      )}
    </SidePane>
  );
}

function StartForm(given: {
  readonly kind: 'spot' | 'location';
  readonly settings: { readonly blindCounts: boolean; readonly counters: 1 | 2 };
}): ReactNode {
  const { kind, settings } = given;
  const places = useCore('yard.places', {});
  const start = useCommand('count.start');
  const [, navigate] = useLocation();
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [blind, setBlind] = useState(settings.blindCounts);
  const [counters, setCounters] = useState<1 | 2>(settings.counters);
  const [byOwner, setByOwner] = useState(false);
  const [remark, setRemark] = useState('');
  const loose =
    places.data?.locations.filter((place) =>
      ['yard', 'rack', 'site', 'container', 'pour', 'gang'].includes(place.kind),
    ) ?? [];
  const begin = (): void =>
    start.mutate(
      {
        kind,
        blind,
        counters,
        byOwner,
        ...(chosen.length > 0 && { locations: [...chosen] }),
        ...(remark.trim() !== '' && { remark: remark.trim() }),
      },
      { onSuccess: (done) => navigate(`/yard/counts/${encodeURIComponent(done.count)}?do=enter`) },
    );
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!start.isPending) begin();
      }}
    >
      <fieldset className="count-places">
        <legend className="field-label">
          {kind === 'spot' ? 'Only at (all places if none is ticked)' : 'Places'}
        </legend>
        {loose.map((place) => (
          <label key={place.code} className="tick">
            <input
              type="checkbox"
              checked={chosen.includes(place.code)}
              onChange={(event) =>
                setChosen((old) =>
                  event.target.checked ? [...old, place.code] : old.filter((each) => each !== place.code),
                )
              }
            />
            {place.code} {place.name}
          </label>
        ))}
      </fieldset>
      <label className="tick">
        <input type="checkbox" checked={blind} onChange={(event) => setBlind(event.target.checked)} />
        blind: no booked figure before it is counted
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={counters === 2}
          onChange={(event) => setCounters(event.target.checked ? 2 : 1)}
        />
        two counters, each alone
      </label>
      {kind === 'location' ? (
        <label className="tick">
          <input type="checkbox" checked={byOwner} onChange={(event) => setByOwner(event.target.checked)} />
          each owner’s pieces by themselves
        </label>
      ) : null}
      <label className="field">
        <span className="field-label">Remark</span>
        <input value={remark} maxLength={400} onChange={(event) => setRemark(event.target.value)} />
      </label>
      {start.error === null ? null : <RefusalNote error={start.error} />}
      <div className="slip-end">
        <button type="submit" className="primary">
          Start
        </button>
      </div>
      <Preview kind={kind} locations={chosen} byOwner={byOwner} />
    </form>
  );
}

/** The lines that it would take, and why these. */
function Preview(props: {
  readonly kind: 'spot' | 'location';
  readonly locations: readonly string[];
  readonly byOwner: boolean;
}): ReactNode {
  const { kind, locations, byOwner } = props;
  const lines = useCore('count.lines', {
    kind,
    byOwner,
    ...(locations.length > 0 && { locations: [...locations] }),
  });
  if (lines.error !== null) return <RefusalNote error={lines.error} />;
  if (lines.data === undefined) return <Waiting what="Choosing the lines …" />;
  const rows = lines.data.lines;
  if (rows.length === 0)
    return <p className="soft">{kind === 'location' ? 'Tick a place.' : 'Nothing lies there.'}</p>;
  return (
    <table className="plain count-preview">
      <caption className="field-label">
        {rows.length} {rows.length === 1 ? 'line' : 'lines'} to count
      </caption>
      <thead>
        <tr>
          <th scope="col">Place</th>
          <th scope="col">Component</th>
          <th scope="col">{kind === 'spot' ? 'Why' : 'Owner'}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.location} ${row.component} ${row.owner}`}>
            <td>{row.location}</td>
            <td>
              <b>{row.component}</b> <span className="soft">{row.name}</span>
            </td>
            <td className="soft">
              {kind === 'spot' ? row.reasons.map(lineReasonWords).join(', ') : (row.owner ?? 'all')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
