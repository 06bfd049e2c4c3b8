// One proposal: what decided, both faces, what is found, and what is loose beside the gangs.
import type { ReactNode } from 'react';
import type { Panel } from '../../../core/catalogue/component.ts';
import { formatHours } from '../../../core/units/hours.ts';
import { useUnits } from '../../parts/units.tsx';
import { ColumnDrawing } from './column-drawing.tsx';
import type { Proposal } from './fill-shapes.ts';
import { FacesDrawing } from './faces-drawing.tsx';
import { proofWords, scoreWords } from './score-words.ts';

export function ProposalView(props: {
  readonly proposal: Proposal;
  readonly panels: ReadonlyMap<string, Panel>;
}): ReactNode {
  const { proposal, panels } = props;
  const units = useUnits();
  return (
    <>
      <p className="fill-score">
        {scoreWords(proposal, units).join(' · ')}
        <strong> {proofWords(proposal.proven)}</strong>
      </p>
      {proposal.gangs.length > 0 ? (
        <FacesDrawing proposal={proposal} panels={panels} />
      ) : (
        <ColumnDrawing proposal={proposal} panels={panels} />
      )}
      <p className="soft fill-legend">
        Side B lies as along the wall, not as seen from its own back. A cross marks a tie hole without a hole
        opposite; a lighter one faces no form and is plugged.
      </p>
      <Findings findings={proposal.findings} />
      <Loose proposal={proposal} />
    </>
  );
}

const graver = { stop: 0, caution: 1, note: 2 } as const;

export function Findings(props: { readonly findings: Proposal['findings'] }): ReactNode {
  const sorted = props.findings.toSorted((one, other) => graver[one.severity] - graver[other.severity]);
  return (
    <section aria-labelledby="fill-findings">
      <h2 id="fill-findings">Findings</h2>
      {sorted.length === 0 ? (
        <p className="soft">Nothing was found. That is not a release for use.</p>
      ) : (
        <ul className="fill-findings">
          {sorted.map(({ severity, message, where }, index) => (
            // oxlint-disable-next-line react/no-array-index-key -- two findings may say the same
            <li key={index}>
              <span className={`severity severity-${severity}`}>{severity}</span> {message}{' '}
              <span className="soft">{typeof where === 'string' ? where : ''}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

const purposes: Readonly<Record<Proposal['loose'][number]['purpose'], string>> = {
  'inside-corner': 'inside corner',
  'outside-corner': 'outside corner',
  'stop-end': 'stop-end, made up',
  closure: 'closure, made up',
  'gang-locks': 'locks between gangs',
  ties: 'ties',
  'opening-joint': 'locks of the opening joints',
};

function Loose(props: { readonly proposal: Proposal }): ReactNode {
  const { loose, short } = props.proposal;
  const units = useUnits();
  const shorts = Object.entries(short);
  return (
    <section aria-labelledby="fill-loose">
      <h2 id="fill-loose">Beside the gangs</h2>
      {shorts.length === 0 ? null : (
        <p>
          <span className="short-word">short</span>{' '}
          {shorts.map(([code, count]) => `${count} ${code}`).join(', ')}
        </p>
      )}
      <table className="fill-loose">
        <thead>
          <tr>
            <th>What for</th>
            <th>Component</th>
            <th className="number">Pieces</th>
            <th>Where</th>
            <th>Made on the site</th>
          </tr>
        </thead>
        <tbody>
          {loose.map(({ side, purpose, component, quantity, where, made }) => (
            <tr key={`${side} ${purpose} ${component ?? ''} ${where}`}>
              <td>{purposes[purpose]}</td>
              <td>
                {component ?? (
                  <span className="soft">
                    {purpose === 'ties' ? 'by the wall’s thickness' : 'none in the catalogue'}
                  </span>
                )}
              </td>
              <td className="number">{quantity}</td>
              <td>
                {where}
                {side === 'both' || where.startsWith('side') ? '' : `, side ${side}`}
              </td>
              <td>
                {made === undefined
                  ? ''
                  : `${units.length(made.widthNm)} × ${units.length(made.heightNm)}, ${units.area(made.areaM2)}, ${
                      made.backingPieces === 0
                        ? 'no backing'
                        : `${made.backingPieces} ${made.backing ?? 'backing'}`
                    }, ${made.hours === null ? 'hours not in the rule tables' : formatHours(made.hours)}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
