// The strip ticket on paper, by its id or its name.
import { answer } from '../answer.ts';
import { instantText } from '../plan/local-time.ts';
import { type StripSheetFacts, stripSheet } from '../sheets/strip-sheet.ts';
import { momentMs } from '../yard/moment.ts';
import { conditions } from '../yard/movement.ts';
import { scanCode } from '../yard/scan-code.ts';
import { loosePart, ticketName } from '../yard/strip-ticket.ts';
import { asData } from './as-data.ts';
import { query } from './procedure.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';
import { readShownTicket } from './shown-ticket.ts';

export const sheetStrip = query({
  name: 'sheet.strip',
  input: paperSheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const read = await readShownTicket(book, asked.id, asked.units);
    if (!read.ok) return { ok: false, error: { ...read.error, field: 'id' } };
    const { job, facts, shown } = read.value;
    const { ticket, follows } = facts;
    const pours = await book.pours(ticket.job);
    const local = (at: string): string => (job === null ? at : instantText(momentMs(at) ?? 0, job.timeZone));
    const { cleared, result } = ticket;
    const isBooked = ticket.state === 'booked';
    const sheet = stripSheet({
      name: ticketName(ticket),
      job: { code: ticket.job, name: job?.name ?? '' },
      pour: { code: ticket.pour, name: pours.find(({ code }) => code === ticket.pour)?.name ?? '' },
      state: ticket.state,
      plannedAt: local(ticket.plannedAt),
      place: ticket.place,
      cleared: cleared === null ? null : { ...cleared, at: local(cleared.at) },
      booked: result === null ? null : { at: local(result.at), who: result.who },
      follows: follows === null ? null : ticketName(follows),
      remark: ticket.remark,
      parts: shown.parts.map((part): StripSheetFacts['parts'][number] => ({
        title: part.title,
        isLoose: part.part === loosePart,
        next: part.nextWords,
        lines: part.expected.map((line) => ({
          component: line.component,
          name: line.name,
          expected: line.quantity,
          sought: line.sought,
          unbooked: line.unbooked,
          lookAlike: line.lookAlike,
          counted: isBooked ? conditions.map((condition) => line.counted[condition]) : null,
          missing: isBooked ? line.missing : null,
        })),
      })),
      scanCode: scanCode({ kind: 'ticket', job: ticket.job, code: ticketName(ticket) }),
      units: asked.units ?? job?.units ?? 'us',
    });
    return answer(asData(sheet));
  },
});
