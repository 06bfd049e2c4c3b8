// Counting a ticket by keyboard: parts in the order of the paper, Enter goes down a column, = takes what is missing. A
// scanner typing into the field above goes to a line. What is typed is entered as one part of the count.
import { type ReactNode, useRef, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { RefusalNote } from '../../../parts/notes.tsx';
import { useWindowKeys } from '../../../parts/window-keys.ts';
import { SelectField } from '../gangs/form-parts.tsx';
import type { Ticket } from './asked.ts';
import { keyOf, readEntry, withCell } from './count-draft.ts';
import { GoToLine } from './go-to-line.tsx';
import type { ScanTarget } from './scan-target.ts';
import { TicketPartView } from './ticket-part.tsx';
import type { useKeptCount } from './use-kept-count.ts';

export function CountForm(given: {
  readonly ticket: Ticket;
  readonly kept: ReturnType<typeof useKeptCount>;
}): ReactNode {
  const { ticket, parts } = given.ticket;
  const { count, edit, clear } = given.kept;
  const places = useCore('yard.places', {});
  const enter = useCommand('ticket.enter');
  const [owner, setOwner] = useState('');
  const [said, setSaid] = useState('');
  const body = useRef<HTMLElement>(null);
  const typed = readEntry(parts, count.draft, owner === '' ? null : owner);
  const isOpen = ticket.state === 'open';
  const keep = (): void => {
    if (!isOpen || enter.isPending || typed.errors.length > 0 || typed.lines.length === 0) return;
    enter.mutate(
      { ticket: ticket.id, id: count.id, lines: typed.lines, device: 'here' },
      {
        onSuccess: () => {
          setSaid(`Entered: ${typed.keys.length} ${typed.keys.length === 1 ? 'line' : 'lines'}.`);
          clear();
        },
      },
    );
  };
  useWindowKeys((event) => {
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    keep();
  });
  // Of several lines of one component that of the part in which one counts goes first.
  const lastPart = useRef<string | null>(null);
  return (
    <form
      className="strip-count"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      {isOpen ? (
        <div className="table-tools strip-tools">
          <GoToLine
            ticket={{ name: ticket.name, job: ticket.job, parts }}
            near={() => lastPart.current}
            onGo={(target) => goTo(body.current, target, parts)}
          />
          <SelectField
            label="Marks"
            value={owner}
            none="not looked at"
            options={(places.data?.owners ?? []).map((each) => [each.code, each.name] as const)}
            onChange={setOwner}
          />
          <button
            type="submit"
            className="primary"
            aria-disabled={typed.lines.length === 0 || typed.errors.length > 0}
          >
            Enter{' '}
            {typed.keys.length === 0
              ? 'lines'
              : `${typed.keys.length} ${typed.keys.length === 1 ? 'line' : 'lines'}`}{' '}
            <kbd>Ctrl+Enter</kbd>
          </button>
          <output className="soft">{said}</output>
          <span className="soft strip-hint">
            24 adds · = what is missing · =24 altogether · -2 takes back · 0 none there
          </span>
        </div>
      ) : null}
      {enter.error === null ? null : <RefusalNote error={enter.error} />}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- booked it has no field, and still it scrolls */}
      <section className="strip-parts" ref={body} aria-label="Parts of the ticket" tabIndex={isOpen ? -1 : 0}>
        {parts.map((part) => (
          <TicketPartView
            key={part.part}
            ticket={ticket}
            part={part}
            draft={count.draft}
            errors={typed.errors}
            onFocus={() => {
              lastPart.current = part.part;
            }}
            onCell={(line, column, text) => {
              setSaid('');
              enter.reset();
              edit((old) => withCell(old, line, column, text));
            }}
          />
        ))}
      </section>
    </form>
  );
}

/** The first cell of the line, or of the first line of the part. */
function goTo(body: HTMLElement | null, target: ScanTarget, parts: Ticket['parts']): void {
  const component =
    target.component ?? parts.find((each) => each.part === target.part)?.expected[0]?.component ?? '';
  const key = CSS.escape(keyOf(target.part, component));
  const cell = body?.querySelector<HTMLInputElement>(`input[data-line="${key}"]`);
  cell?.focus();
  cell?.select();
}
