// Both sides of a wall filled at once: what is to be formed at the left, the proposals beside it. What was typed stays
// while the window is open.
import { type ReactNode, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { panelSystem } from '../../../core/catalogue/system.ts';
import { type Output, useCore } from '../../client/core.tsx';
import { Choice } from '../../parts/choice.tsx';
import { type JobClock, useJobClock } from '../../parts/job-time.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { dayStartMs } from '../../parts/zoned.ts';
import { FillFields } from './fill-fields.tsx';
import type { Asked, Proposal } from './fill-shapes.ts';
import { askedBy, type FillTexts, firstTexts } from './fill-texts.ts';
import { KeepDesigns } from './keep-designs.tsx';
import { PlanDrawing } from './plan-drawing.tsx';
import { Findings, ProposalView } from './proposal-view.tsx';
import { proposalName } from './score-words.ts';
import { rememberTyped, typedBefore } from './typed-before.ts';
import './fill.css';

export function FillScreen(): ReactNode {
  const systems = useCore('rules.read', {});
  const places = useCore('yard.places', {});
  const clock = useJobClock();
  const error = systems.error ?? places.error;
  if (error !== null) return <RefusalNote error={error} />;
  if (systems.data === undefined || places.data === undefined || clock === null)
    return <Waiting what="Reading the catalogue …" />;
  return (
    <Filling
      systems={systems.data.systems}
      first={systems.data.system}
      clock={clock}
      locations={places.data.locations.filter(({ inHand }) => inHand)}
    />
  );
}

function Filling(props: {
  readonly systems: Output<'rules.read'>['systems'];
  readonly first: string;
  readonly clock: JobClock;
  readonly locations: Output<'yard.places'>['locations'];
}): ReactNode {
  const units = useUnits();
  const { clock } = props;
  const [texts, setTexts] = useState<FillTexts>(
    () => typedBefore()?.texts ?? firstTexts(props.first, clock.planFrom.slice(0, 10), units.system),
  );
  const [asked, setAsked] = useState<Asked | null>(() => typedBefore()?.asked ?? null);
  const read = askedBy(texts, units.system, (date) =>
    new Date(dayStartMs(date, clock.timeZone)).toISOString(),
  );
  const change = (more: Partial<FillTexts>): void => {
    const next = { ...texts, ...more };
    setTexts(next);
    rememberTyped({ texts: next, asked });
  };
  const ask = (): void => {
    setAsked(read.asked);
    rememberTyped({ texts, asked: read.asked });
  };
  const isOld = asked !== null && JSON.stringify(asked) !== JSON.stringify(read.asked);
  return (
    <div className="screen fill">
      <header className="screen-head">
        <h1>Fill a wall</h1>
        <p className="soft">
          Both sides together, so that the tie holes face each other. <Link href="/designs">Designs</Link>
        </p>
      </header>
      <div className="screen-body">
        <div className="pane fill-entries">
          {read.asked?.wall === undefined ? null : <PlanDrawing wall={read.asked.wall} />}
          <FillFields
            texts={texts}
            problems={read.problems}
            systems={props.systems}
            locations={props.locations}
            onTexts={change}
          />
          <p className="fill-ask">
            <Button className="primary" isDisabled={read.asked === null} onPress={ask}>
              Propose gangs
            </Button>
            {isOld ? <span className="soft">What is shown was asked before the last change.</span> : null}
          </p>
        </div>
        <div className="pane grow fill-answers">
          {asked === null ? (
            <Empty title="No proposal yet">
              <p>
                Say what is to be formed, then ask: gangs for both sides, with every tie hole in its place.
              </p>
            </Empty>
          ) : (
            <Answered asked={asked} />
          )}
        </div>
      </div>
      <CautionLine about="Gangs are proposed from entered sizes and rule tables; ties, braces and pressure are the designer's." />
    </div>
  );
}

function Answered(props: { readonly asked: Asked }): ReactNode {
  const { asked } = props;
  const answer = useCore('fill.propose', asked);
  const [chosen, setChosen] = useState<Proposal['order'] | null>(null);
  const panels = usePanels(asked.system);
  if (answer.error !== null) return <RefusalNote error={answer.error} />;
  if (answer.data === undefined || answer.isPlaceholderData)
    return <Waiting what="Filling both sides, until nothing better is left …" />;
  const { proposals, findings } = answer.data;
  // What cannot be tied is looked at when somebody asks for it, not first.
  const proposal =
    proposals.find(({ order }) => order === chosen) ??
    proposals.find(({ score }) => score.holesAlone === 0) ??
    proposals[0];
  if (proposal === undefined) {
    return (
      <Empty title="It cannot be filled so">
        <Findings findings={findings} />
      </Empty>
    );
  }
  return (
    <>
      <Choice
        label="Proposals"
        value={proposal.order}
        options={proposals.map((each) => [each.order, proposalName(each)] as const)}
        onChange={setChosen}
      />
      {findings.length > 0 ? <Findings findings={findings} /> : null}
      <ProposalView proposal={proposal} panels={panels} />
      <KeepDesigns
        key={`${proposal.order} ${JSON.stringify(asked)}`}
        proposal={proposal}
        system={asked.system}
      />
    </>
  );
}

function usePanels(system: string) {
  const read = useCore('rules.read', { system });
  return useMemo(() => {
    const made = read.data === undefined ? undefined : panelSystem(read.data.components, read.data.rules);
    return new Map(made?.ok === true ? made.value.panels.map((panel) => [panel.code, panel]) : []);
  }, [read.data]);
}
