// What decided between the proposals, in words: the first column before the second, and so on.
import type { ReactNode } from 'react';
import { useUnits } from '../../parts/units.tsx';
import type { Proposal } from './fill-shapes.ts';
import { proofWords, proposalName, scoreHeads, scoreWords } from './score-words.ts';

export function ProposalTable(props: {
  readonly proposals: readonly Proposal[];
  readonly chosen: Proposal;
  readonly useDesigns: boolean;
  readonly onChosen: (order: Proposal['order']) => void;
}): ReactNode {
  const { proposals, chosen } = props;
  const units = useUnits();
  const heads = scoreHeads(chosen);
  return (
    <table className="fill-proposals">
      <caption className="visually-hidden">Proposals, with what decides from left to right</caption>
      <thead>
        <tr>
          <th scope="col">Proposal</th>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
          <th scope="col">Proof</th>
        </tr>
      </thead>
      <tbody>
        {proposals.map((proposal) => {
          const name = proposalName(proposal, props.useDesigns);
          return (
            <tr key={proposal.order} className={proposal === chosen ? 'chosen' : ''}>
              <th scope="row">
                {proposals.length === 1 ? (
                  name
                ) : (
                  <label>
                    <input
                      type="radio"
                      name="proposal"
                      checked={proposal === chosen}
                      onChange={() => props.onChosen(proposal.order)}
                    />
                    {name}
                  </label>
                )}
              </th>
              {scoreWords(proposal, units).map(({ words, isBad }, index) => (
                <td key={heads[index]} className={isBad ? 'short-word' : ''}>
                  {words}
                </td>
              ))}
              <td>{proofWords(proposal.proven)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
