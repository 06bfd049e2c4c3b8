// Who cleared the strip, when, under which clause, on what evidence. A time of the plan is a forecast and stands for no
// name.
import { type ReactNode, useState } from 'react';
import { answer } from '../../../../core/answer.ts';
import type { JobClock } from '../../../parts/job-clock.ts';
import { useJobClock, useTimeWords } from '../../../parts/job-time.ts';
import { errorFor, FormEnd, readMoment, TextField, whenHint } from '../gangs/form-parts.tsx';
import type { Clearance, Ticket } from './asked.ts';
import { useTicketSave } from './use-ticket-save.ts';

export function ClearancePart(props: { readonly ticket: Ticket['ticket'] }): ReactNode {
  const { cleared, state } = props.ticket;
  const words = useTimeWords();
  const clock = useJobClock();
  const [isChanging, setChanging] = useState(false);
  const isOpen = state === 'open';
  return (
    <section className="strip-side-part" aria-label="Clearance">
      <h2>Cleared to strip</h2>
      {cleared === null ? (
        <p className="note note-caution">
          <span className="note-word">Not cleared</span>
          <span>
            Nobody is entered who cleared this strip. {words.full(props.ticket.plannedAt)} is a forecast, and
            a forecast is never a release.
          </span>
        </p>
      ) : (
        <dl className="detail-facts strip-cleared">
          <div>
            <dt>By</dt>
            <dd>
              <b>{cleared.by}</b>
            </dd>
          </div>
          <div>
            <dt>When</dt>
            <dd>{words.full(cleared.at)}</dd>
          </div>
          <div>
            <dt>Clause</dt>
            <dd>{cleared.clause === '' ? 'none named' : cleared.clause}</dd>
          </div>
          <div>
            <dt>Evidence</dt>
            <dd>{cleared.evidence === '' ? 'none named' : cleared.evidence}</dd>
          </div>
        </dl>
      )}
      {isOpen && (isChanging || cleared === null) && clock !== null ? (
        <ClearanceForm
          key={JSON.stringify(cleared)}
          ticket={props.ticket}
          clock={clock}
          onDone={() => setChanging(false)}
        />
      ) : null}
      {isOpen && cleared !== null && !isChanging ? (
        <button type="button" className="quiet" onClick={() => setChanging(true)}>
          Change the clearance
        </button>
      ) : null}
    </section>
  );
}

function ClearanceForm(given: {
  readonly ticket: Ticket['ticket'];
  readonly clock: JobClock;
  readonly onDone: () => void;
}): ReactNode {
  const { ticket, clock } = given;
  const words = useTimeWords();
  const before = ticket.cleared;
  const [draft, setDraft] = useState({
    by: before?.by ?? '',
    /** Null: as it was. */
    at: before === null ? '' : (null as string | null),
    clause: before?.clause ?? '',
    evidence: before?.evidence ?? '',
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const saving = useTicketSave(ticket.id);
  const edit = (part: Partial<typeof draft>): void => {
    setWrong({});
    saving.reset();
    setDraft((old) => ({ ...old, ...part }));
  };
  const keep = (cleared: Clearance | null): void =>
    saving.save(`clearance of ${ticket.name}`, { cleared: before }, { cleared }, given.onDone);
  const save = (): void => {
    const near = { ...clock, planFrom: ticket.plannedAt };
    const at = draft.at === null && before !== null ? answer(before.at) : readMoment(draft.at ?? '', near);
    setWrong({
      ...(draft.by.trim() === '' && { by: { message: 'Who cleared it is missing.' } }),
      ...(at.ok ? {} : { at: at.error }),
    });
    if (draft.by.trim() === '' || !at.ok) return;
    keep({
      by: draft.by.trim(),
      at: at.value,
      clause: draft.clause.trim(),
      evidence: draft.evidence.trim(),
    });
  };
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <div className="slip-fields">
        <TextField
          label="Cleared by"
          value={draft.by}
          maxLength={80}
          error={errorFor(wrong, saving.error, 'by')}
          onChange={(by) => edit({ by })}
        />
        <TextField
          label="When"
          value={draft.at ?? (before === null ? '' : words.full(before.at))}
          placeholder={whenHint}
          error={errorFor(wrong, saving.error, 'at')}
          onChange={(at) => edit({ at })}
        />
        <TextField label="Under which clause" value={draft.clause} onChange={(clause) => edit({ clause })} />
        <TextField
          label="On what evidence"
          value={draft.evidence}
          placeholder="strength, test numbers, hours"
          onChange={(evidence) => edit({ evidence })}
        />
      </div>
      <FormEnd
        words="Enter the clearance"
        busy={saving.busy}
        done={null}
        refused={saving.error}
        fields={['by', 'at']}
        {...(before !== null && { onCancel: given.onDone })}
      />
      {before === null ? null : (
        <button type="button" className="quiet" onClick={() => keep(null)}>
          Take the clearance out
        </button>
      )}
    </form>
  );
}
