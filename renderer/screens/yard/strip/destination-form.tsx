// Where a gang goes after the strip, when the plan is not followed: chosen from the turns of the plan and the places.
import { type ReactNode, useState } from 'react';
import { useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { errorFor, FormEnd, looseKinds, PlaceSelect, SelectField } from '../gangs/form-parts.tsx';
import { TurnSelect } from '../gangs/turn-select.tsx';
import type { Next, Ticket, TicketPart } from './asked.ts';
import { useTicketSave } from './use-ticket-save.ts';

const hows = [
  ['fly-on', 'fly on to a turn of its design'],
  ['regang', 're-gang for a turn of another design'],
  ['stand-by', 'stand by, made up'],
  ['break-down', 'break down'],
] as const;

export function DestinationForm(given: {
  readonly ticket: Ticket['ticket'];
  readonly part: TicketPart;
  readonly next: Next;
  readonly onDone: () => void;
}): ReactNode {
  const { ticket, part, next: before } = given;
  const board = useCore('board.read', { job: useJob().code });
  const [how, setHow] = useState<Next['how']>(before.how);
  const [turn, setTurn] = useState('turn' in before ? before.turn : '');
  const [place, setPlace] = useState('place' in before ? before.place : ticket.place);
  const [missing, setMissing] = useState<Parameters<typeof errorFor>[0]>({});
  const saving = useTicketSave(ticket.id);
  const goesOn = how === 'fly-on' || how === 'regang';
  const save = (): void => {
    const chosen = board.data?.turns.find((each) => each.id === turn);
    if (goesOn && chosen === undefined) {
      setMissing({ turn: { message: 'For which turn is missing.' } });
      return;
    }
    const next = nextOf(how, chosen, place);
    if (next === null) return;
    saving.save(
      `where ${part.title} goes`,
      { next: [{ part: part.part, next: before }] },
      { next: [{ part: part.part, next }] },
      given.onDone,
    );
  };
  return (
    <form
      className="slip strip-destination"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <div className="slip-fields">
        <SelectField
          label="After the strip it is to"
          value={how}
          options={hows}
          onChange={(chosen) => {
            if (chosen !== '') setHow(chosen);
          }}
        />
        {goesOn ? (
          <TurnSelect
            label="For the turn"
            value={turn}
            {...(how === 'fly-on' && part.design !== null && { design: part.design })}
            error={errorFor(missing, saving.error, 'turn')}
            onChange={(chosen) => {
              setMissing({});
              setTurn(chosen);
            }}
          />
        ) : (
          <PlaceSelect
            label="At"
            value={place}
            kinds={looseKinds}
            error={errorFor(missing, saving.error, 'place')}
            onChange={setPlace}
          />
        )}
      </div>
      <FormEnd
        words="Send it there"
        busy={saving.busy}
        done={null}
        refused={saving.error}
        fields={['place', 'turn']}
        onCancel={given.onDone}
      />
    </form>
  );
}

function nextOf(
  how: Next['how'],
  turn: { readonly id: string; readonly pour: string; readonly design: string } | undefined,
  place: string,
): Next | null {
  if (how === 'stand-by' || how === 'break-down') return { how, place };
  if (turn === undefined) return null;
  const { id, pour, design } = turn;
  return how === 'fly-on' ? { how, turn: id, pour } : { how, turn: id, pour, design };
}
