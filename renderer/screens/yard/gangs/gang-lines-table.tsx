// Before a gang is built or re-ganged: its pieces, what comes out and goes in, what is there and what is short.
import type { ReactNode } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { useUnits } from '../../../parts/units.tsx';

type Lines = Output<'gang.lines'>;

export function GangLines(props: {
  readonly design: string;
  readonly from: string;
  readonly at: string | null;
  /** Of a gang that is there: what a re-gang would move. */
  readonly gang?: string;
}): ReactNode {
  const { design, from, at, gang } = props;
  const isAsked = design !== '' && from !== '';
  const lines = useCore(
    'gang.lines',
    { design, from, ...(at === null ? {} : { at }), ...(gang === undefined ? {} : { gang }) },
    { enabled: isAsked },
  );
  if (!isAsked) return <p className="soft side-words">Choose the design and the place to see its pieces.</p>;
  if (lines.error !== null) return <RefusalNote error={lines.error} />;
  if (lines.data === undefined) return <Waiting what="Taking off the design …" />;
  return gang === undefined ? (
    <BuildLines lines={lines.data} from={from} />
  ) : (
    <RegangLines lines={lines.data} from={from} />
  );
}

function BuildLines({ lines, from }: { readonly lines: Lines; readonly from: string }): ReactNode {
  const units = useUnits();
  return (
    <table className="side-table">
      <caption>
        {units.weight(lines.weightGrams)} of pieces, without hooks. {shortWords(lines, from)}
      </caption>
      <thead>
        <tr>
          <th scope="col">Component</th>
          <th scope="col" className="numeric">
            Needed
          </th>
          <th scope="col" className="numeric">
            Ready at {from}
          </th>
          <th scope="col" className="numeric">
            Short
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.lines.map((line) => (
          <tr key={line.component}>
            <td>
              <b>{line.component}</b> <span className="soft">{line.name}</span>
            </td>
            <td className="numeric">{line.wanted}</td>
            <td className="numeric">{line.there}</td>
            <td className="numeric">{shortCell(line.short)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function RegangLines({ lines, from }: { readonly lines: Lines; readonly from: string }): ReactNode {
  const moved = lines.lines.filter((line) => line.putIn + line.takenOut > 0);
  if (moved.length === 0)
    return <p className="soft side-words">It holds the pieces of that design already: nothing moves.</p>;
  return (
    <table className="side-table">
      <caption>What moves. {shortWords(lines, from)}</caption>
      <thead>
        <tr>
          <th scope="col">Component</th>
          <th scope="col" className="numeric">
            Is in it
          </th>
          <th scope="col" className="numeric">
            Taken out
          </th>
          <th scope="col" className="numeric">
            Put in
          </th>
          <th scope="col" className="numeric">
            Ready at {from}
          </th>
          <th scope="col" className="numeric">
            Short
          </th>
        </tr>
      </thead>
      <tbody>
        {moved.map((line) => (
          <tr key={line.component}>
            <td>
              <b>{line.component}</b> <span className="soft">{line.name}</span>
            </td>
            <td className="numeric">{line.inGang}</td>
            <td className="numeric">{line.takenOut === 0 ? '' : line.takenOut}</td>
            <td className="numeric">{line.putIn === 0 ? '' : line.putIn}</td>
            <td className="numeric">{line.putIn === 0 ? '' : line.there}</td>
            <td className="numeric">{shortCell(line.short)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function shortCell(short: number): ReactNode {
  return short === 0 ? '' : <span className="short-word">{short} short</span>;
}

function shortWords({ short }: Lines, from: string): string {
  if (short === 0) return `All of it is ready at ${from} or in the containers there.`;
  return `${short} ${short === 1 ? 'component is' : 'components are'} short at ${from}.`;
}
