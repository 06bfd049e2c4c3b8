// The proposals to choose among and the one that is looked at.
import { type ReactNode, useMemo } from 'react';
import { panelSystem } from '../../../core/catalogue/system.ts';
import { type Output, useCore } from '../../client/core.tsx';
import { Empty, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { ColumnDrawing } from './column-drawing.tsx';
import { FacesDrawing } from './faces-drawing.tsx';
import type { Asked, Proposal } from './fill-shapes.ts';
import { Findings } from './findings.tsx';
import { KeepDesigns } from './keep-designs.tsx';
import { LoosePieces } from './loose-pieces.tsx';
import { ProposalTable } from './proposal-table.tsx';
import { ShortPanels } from './short-panels.tsx';

export function Proposals(props: {
  readonly asked: Asked;
  readonly answer: Output<'fill.propose'>;
  readonly chosen: Proposal['order'] | null;
  readonly onChosen: (order: Proposal['order']) => void;
}): ReactNode {
  const { asked } = props;
  const { proposals, findings } = props.answer;
  const read = useCore('rules.read', { system: asked.system });
  const system = useMemo(() => {
    const made = read.data === undefined ? null : panelSystem(read.data.components, read.data.rules);
    return made?.ok === true ? made.value : null;
  }, [read.data]);
  const units = useUnits();
  // What cannot be tied is looked at when somebody asks for it, not first.
  const proposal =
    proposals.find(({ order }) => order === props.chosen) ??
    proposals.find(({ score }) => score.holesAlone === 0) ??
    proposals[0];
  if (proposal === undefined)
    return (
      <Empty title="It cannot be filled so">
        <Findings findings={findings} />
      </Empty>
    );
  const hasClosure = proposal.loose.some(({ purpose }) => purpose === 'closure');
  return (
    <>
      <ProposalTable
        proposals={proposals}
        chosen={proposal}
        useDesigns={asked.useDesigns}
        onChosen={props.onChosen}
      />
      {system === null ? (
        <Waiting what="Reading the catalogue …" />
      ) : asked.wall === undefined ? (
        <ColumnDrawing proposal={proposal} system={system} />
      ) : (
        <FacesDrawing proposal={proposal} wall={asked.wall} system={system} />
      )}
      <p className="soft fill-legend">
        Broken outline: new gang. Unbroken: on paper already.{' '}
        {asked.wall === undefined
          ? 'Each half is drawn unfolded, from its back; the line through it is its corner.'
          : `Lines between the sides: ties go through. Side B is drawn as it lies along the wall, not from its own back.${
              asked.wall.turns.length > 0 ? ' Shaded: inside corners.' : ''
            }`}{' '}
        {proposal.score.fillerNm > 0 || hasClosure ? 'Hatched: fillers and closures. ' : ''}
        {asked.wall === undefined ? '' : 'Chain line, where the form reaches beyond it: the concrete.'}
      </p>
      <Findings findings={[...findings, ...proposal.findings]} />
      <ShortPanels proposal={proposal} />
      <LoosePieces loose={proposal.loose} units={units} />
      <KeepDesigns key={proposal.order} proposal={proposal} system={asked.system} />
    </>
  );
}
