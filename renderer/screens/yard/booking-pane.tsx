// The slip at the side of the yard: written, booked as a whole or refused as a whole, with what is wrong
// next to its field. After booking, places and reason stay for the next slip.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import type { JobClock } from '../../parts/job-clock.ts';
import { useJobClock } from '../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { reasonHints } from './booking-hints.ts';
import type { ComponentChoice } from './component-field.tsx';
import { SidePane } from './side-pane.tsx';
import { SlipFields } from './slip-fields.tsx';
import type { Places } from './yard-words.ts';
import { SlipLines } from './slip-lines.tsx';
import { SlipPaste } from './slip-paste.tsx';
import {
  beginDraft,
  useSlip,
  withAnotherLine,
  withLine,
  withLines,
  withoutLine,
  withReason,
} from './use-slip.ts';

interface PaneProps {
  readonly component: string | null;
  readonly location: string | null;
  readonly onClose: () => void;
}

export function BookingPane(props: PaneProps): ReactNode {
  const places = useCore('yard.places', {});
  const components = useCore('component.list', {});
  const clock = useJobClock();
  const error = places.error ?? components.error;
  const ready = places.data !== undefined && components.data !== undefined && clock !== null;
  return (
    <SidePane title="Book a movement" className="booking" onClose={props.onClose}>
      {error === null ? null : <RefusalNote error={error} />}
      {ready ? (
        <Slip {...props} places={places.data} components={components.data.components} clock={clock} />
      ) : (
        <Waiting what="Reading places and components …" />
      )}
    </SidePane>
  );
}

function Slip(
  props: PaneProps & {
    readonly places: Places;
    readonly components: readonly ComponentChoice[];
    readonly clock: JobClock;
  },
): ReactNode {
  const { places, components, clock } = props;
  const slip = useSlip(() => beginDraft(places, props.component, props.location), components, clock);
  const { draft, errors, edit } = slip;
  const known = useMemo(
    () => ({
      components: components.map(({ code }) => code),
      owners: places.owners.map(({ code }) => code),
      locations: places.locations.map(({ code }) => code),
      like: reasonHints[draft.reason],
    }),
    [components, places, draft.reason],
  );
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        slip.book();
      }}
    >
      <p className="soft">{reasonHints[draft.reason].words}</p>
      <SlipFields
        draft={draft}
        errors={errors}
        places={places}
        onReason={(reason) => edit((old) => withReason(old, reason, places))}
        onChange={edit}
      />
      <SlipLines
        lines={draft.lines}
        errors={errors}
        components={components}
        onLine={(index, part) => edit((old) => withLine(old, index, part))}
        onRemove={(index) => edit((old) => withoutLine(old, index))}
        onAdd={() => edit(withAnotherLine)}
      />
      <SlipPaste known={known} onTake={(lines) => edit((old) => withLines(old, lines))} />
      {slip.error === null ? null : <RefusalNote error={slip.error} />}
      <div className="slip-end">
        <button type="submit" className="primary" aria-disabled={slip.busy}>
          Book
        </button>
        <output>{slip.booked ?? (errors.length > 0 ? 'Not booked: see the fields above.' : '')}</output>
      </div>
    </form>
  );
}
