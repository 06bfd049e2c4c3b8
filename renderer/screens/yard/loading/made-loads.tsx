// The loads that come of what is to go: how many, how few they could be, what fits on none, each drawn and kept by
// itself; and the sizes it all rests on, defaults marked.
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { layerWords } from '../../../../core/sheets/load-places.ts';
import { type Output, useCommand } from '../../../client/core.tsx';
import { RefusalNote } from '../../../parts/notes.tsx';
import { useUnits } from '../../../parts/units.tsx';
import { LoadDrawing } from './load-drawing.tsx';
import { LoadOrder, LoadSums } from './load-order.tsx';
import { codeOf, leastWords, type LoadFigures, passesWords } from './loading-words.ts';

type Proposal = Output<'load.propose'>;

export function MadeLoads(props: { readonly proposal: Proposal; readonly note: string | null }): ReactNode {
  const { proposal, note } = props;
  const { loads, notFitting } = proposal;
  return (
    <>
      <output className="load-count">
        <b>
          {loads.length} {loads.length === 1 ? 'load' : 'loads'}.
        </b>{' '}
        {leastWords(proposal.atLeast)}.{' '}
        {proposal.fewest
          ? 'Fewer are not possible with these trucks and sizes.'
          : 'Fewer may be possible: not every way was tried.'}
      </output>
      {notFitting.map(({ layer, passes }) => (
        <div key={JSON.stringify([layer.what, layer.stop])} className="note note-stop" role="alert">
          <span className="note-word">On no truck</span>
          <span>
            {layerWords(layer)} {proposal.names[codeOf(layer)] ?? ''}: {passesWords(passes)}.
          </span>
        </div>
      ))}
      {loads.map((load, index) => (
        // oxlint-disable-next-line react/no-array-index-key -- loads have no name before they are kept
        <MadeLoad key={index} number={index + 1} load={load} names={proposal.names} note={note} />
      ))}
      <Sizes proposal={proposal} />
    </>
  );
}

function MadeLoad(props: {
  readonly number: number;
  readonly load: LoadFigures;
  readonly names: Proposal['names'];
  readonly note: string | null;
}): ReactNode {
  const { load, number } = props;
  const save = useCommand('load.save');
  const [id] = useState(() => crypto.randomUUID());
  const keep = (): void => {
    if (save.isPending) return;
    save.mutate({
      load: {
        id,
        paper: props.note,
        version: 0,
        truck: load.truck.code,
        stacks: load.stacks,
        leavesAt: null,
        tiedDownBy: null,
        remark: null,
      },
    });
  };
  return (
    <section className="made-load" aria-label={`Load ${number}`}>
      <header>
        <h2>
          Load {number}: {load.truck.code} {load.truck.name}
        </h2>
        {save.data === undefined ? (
          <button type="button" aria-disabled={save.isPending} onClick={keep}>
            Keep load {number}
          </button>
        ) : (
          <Link href={`/yard/loading/${id}`}>Kept: leaving and loading list</Link>
        )}
      </header>
      {save.error === null ? null : <RefusalNote error={save.error} />}
      <LoadSums figures={load} />
      <LoadDrawing figures={load} />
      <LoadOrder figures={load} names={props.names} />
    </section>
  );
}

function Sizes({ proposal }: { readonly proposal: Proposal }): ReactNode {
  const units = useUnits();
  const { sizes, defaults } = proposal;
  return (
    <section className="load-sizes" aria-label="Sizes">
      <h2>What it rests on</h2>
      <p className="soft">
        Catalogue sizes where there are any. A figure marked default has no source: measure where it is tight.
        Bearers of {units.length(defaults.bearersNm)} under every bundle and a laid-down gang{' '}
        {units.length(defaults.gangHeightNm)} high are defaults. Nothing is laid over a box, a container or a
        gang; nothing heavier, longer or wider lies on anything. The weight on the axles is not computed.
      </p>
      {sizes.length === 0 ? null : (
        <table className="side-table">
          <thead>
            <tr>
              <th scope="col">Component</th>
              <th scope="col">Lies</th>
              <th scope="col" className="numeric">
                Length
              </th>
              <th scope="col" className="numeric">
                Width
              </th>
              <th scope="col" className="numeric">
                Height
              </th>
              <th scope="col">Default</th>
            </tr>
          </thead>
          <tbody>
            {sizes.map((size) => (
              <tr key={size.component}>
                <td>
                  <b>{size.component}</b> <span className="soft">{proposal.names[size.component] ?? ''}</span>
                </td>
                <td>{size.how === 'box' ? `${size.pieces} in a box` : `in bundles of ${size.pieces}`}</td>
                <td className="numeric">{units.length(size.lengthNm)}</td>
                <td className="numeric">{units.length(size.widthNm)}</td>
                <td className="numeric">{units.length(size.thicknessNm)}</td>
                <td>{size.defaults.join(', ') || 'none'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
