// Both sides of a wall filled at once: what is to be formed at the left, the proposals beside it. What was typed, asked
// and chosen stays while the window is open.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { type Output, useCore } from '../../client/core.tsx';
import type { JobClock } from '../../parts/job-clock.ts';
import { useJobClock } from '../../parts/job-time.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { dayStartMs } from '../../parts/zoned.ts';
import { FillFields } from './fill-fields.tsx';
import { askedBy, type FillTexts, firstTexts, planBy } from './fill-texts.ts';
import { ColumnPlan, PlanDrawing } from './plan-drawing.tsx';
import { Proposals } from './proposals.tsx';
import { rememberTyped, typedBefore } from './typed-before.ts';
import { useProposals } from './use-proposals.tsx';
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
  // Another book has other systems: what was typed for this one's is of no use there.
  const before = props.systems.some(({ code }) => code === typedBefore()?.texts.system)
    ? typedBefore()
    : null;
  const [typed, setTyped] = useState(
    () =>
      before ?? {
        texts: firstTexts(props.first, clock.planFrom.slice(0, 10), units.system),
        asked: null,
        chosen: null,
      },
  );
  const { texts, asked, chosen } = typed;
  const read = askedBy(texts, units.system, (date) =>
    new Date(dayStartMs(date, clock.timeZone)).toISOString(),
  );
  const answered = useProposals(asked);
  const change = (more: Partial<typeof typed>): void => {
    const next = { ...typed, ...more };
    setTyped(next);
    rememberTyped(next);
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
          <Seen texts={texts} />
          <FillFields
            texts={texts}
            problems={{ ...(isOld ? {} : answered.problems), ...read.problems }}
            systems={props.systems}
            locations={props.locations}
            onTexts={(more) => change({ texts: { ...texts, ...more } })}
          />
          <div className="fill-ask">
            <Button
              className="primary"
              isDisabled={read.asked === null}
              onPress={() => {
                change({ asked: read.asked, chosen: null });
                answered.again();
              }}
            >
              Propose gangs
            </Button>
            <span className="soft">
              {read.asked === null ? 'Something cannot be read.' : isOld ? 'Changed since it was asked.' : ''}
            </span>
          </div>
        </div>
        <div className="pane grow fill-answers">
          {asked === null ? (
            <Empty title="No proposal yet">
              <p>
                Say what is to be formed, then ask: gangs for both sides, with every tie hole in its place.
              </p>
            </Empty>
          ) : answered.answer === null ? (
            answered.waiting
          ) : (
            <Proposals
              key={answered.key}
              asked={asked}
              answer={answered.answer}
              chosen={chosen}
              onChosen={(order) => change({ chosen: order })}
            />
          )}
        </div>
      </div>
      <CautionLine about="Gangs are proposed from entered sizes and rule tables; ties, braces and pressure are the designer's." />
    </div>
  );
}

/** The plan of the last wall that could be read: a slip while typing does not take it away. */
function Seen(props: { readonly texts: FillTexts }): ReactNode {
  const { texts } = props;
  const units = useUnits();
  const plan = planBy(texts, units.system);
  const [last, setLast] = useState(plan);
  if (plan !== null && JSON.stringify(plan) !== JSON.stringify(last)) setLast(plan);
  const shown = plan ?? last;
  if (shown === null || shown.kind !== texts.what) return null;
  return shown.kind === 'column' ? (
    <ColumnPlan widthANm={shown.widthANm} widthBNm={shown.widthBNm} />
  ) : (
    <PlanDrawing plan={shown} closed={texts.closed} ends={[texts.startKind, texts.endKind]} />
  );
}
