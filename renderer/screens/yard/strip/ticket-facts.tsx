// Where what is taken apart is laid, and a remark: both may be changed while the ticket is open.
import { type ReactNode, useState } from 'react';
import { errorFor, looseKinds, PlaceSelect, TextField } from '../gangs/form-parts.tsx';
import { RefusalNote } from '../../../parts/notes.tsx';
import type { Ticket } from './asked.ts';
import { useTicketSave } from './use-ticket-save.ts';

export function TicketFacts(props: { readonly ticket: Ticket['ticket'] }): ReactNode {
  const { ticket } = props;
  const saving = useTicketSave(ticket.id);
  const [typed, setTyped] = useState<string | null>(null);
  if (ticket.state !== 'open')
    return (
      <section className="strip-side-part" aria-label="Where it was laid">
        <p>
          Laid down at <b>{ticket.place}</b>
          {ticket.remark === null || ticket.remark === '' ? '' : `. ${ticket.remark}`}
        </p>
      </section>
    );
  const saveRemark = (): void => {
    if (typed === null) return;
    const remark = typed.trim() === '' ? null : typed.trim();
    if (remark === ticket.remark) setTyped(null);
    else saving.save(`remark of ${ticket.name}`, { remark: ticket.remark }, { remark }, () => setTyped(null));
  };
  return (
    <section className="strip-side-part" aria-label="Where it is laid">
      <div className="slip-fields">
        <PlaceSelect
          label="Taken apart, it is laid down at"
          value={ticket.place}
          kinds={looseKinds}
          error={errorFor({}, saving.error, 'place')}
          onChange={(place) => {
            if (place !== '')
              saving.save(`where ${ticket.name} is laid down`, { place: ticket.place }, { place });
          }}
        />
        <div
          onBlur={saveRemark}
          onKeyDown={(event) => {
            if (event.key === 'Enter') saveRemark();
          }}
          role="presentation"
        >
          <TextField label="Remark" value={typed ?? ticket.remark ?? ''} onChange={setTyped} />
        </div>
      </div>
      {saving.error === null || saving.error.field === 'place' ? null : <RefusalNote error={saving.error} />}
    </section>
  );
}
