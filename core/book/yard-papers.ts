// Notes with their attachments, and signed figures.
import type { Kysely } from 'kysely';
import { z } from 'zod';
import {
  type Attachment,
  attachmentText,
  noteText,
  type NoteKind,
  type NoteState,
  type YardNote,
} from '../yard/note.ts';
import type { FigureSide, SignedFigure } from '../yard/signed-figure.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, NoteRow } from './tables.ts';

const countsThere = z.array(z.int().min(0).nullable());

/** By kind and number. */
export async function readNotes(
  db: Kysely<BookTables>,
  only: { readonly id?: string; readonly state?: NoteState } = {},
): Promise<readonly YardNote[]> {
  let query = db.selectFrom('yard_note').selectAll();
  if (only.id !== undefined) query = query.where('id', '=', only.id);
  if (only.state !== undefined) query = query.where('state', '=', only.state);
  const rows = await query.orderBy('kind').orderBy('number').execute();
  return rows.map(noteOfRow);
}

function noteOfRow(row: NoteRow): YardNote {
  return {
    ...storedJson(noteText, row.note, `note ${row.number}`),
    id: row.id,
    kind: row.kind as NoteKind,
    number: row.number,
    state: row.state as NoteState,
    expectedAt: row.expected_at,
    countedThere:
      row.counted_there === null ? null : storedJson(countsThere, row.counted_there, `note ${row.number}`),
    version: row.version,
  };
}

/** A new version of it; what it says is checked before, not here. */
export async function putNote(db: Kysely<BookTables>, command: string, note: YardNote): Promise<void> {
  const { id, kind, number, state, expectedAt, countedThere, version, ...text } = note;
  const row: NoteRow = {
    id,
    kind,
    number,
    state,
    expected_at: expectedAt,
    note: toStoredJson(noteText, text, `note ${number}`),
    counted_there: countedThere === null ? null : JSON.stringify(countedThere),
    version,
    command,
  };
  await db
    .insertInto('yard_note')
    .values(row)
    .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
    .execute();
}

export async function readAttachments(
  db: Kysely<BookTables>,
  paper?: string,
): Promise<readonly Attachment[]> {
  let query = db.selectFrom('attachment').selectAll();
  if (paper !== undefined) query = query.where('paper', '=', paper);
  const rows = await query.orderBy('id').execute();
  return rows.map((row) => ({
    ...storedJson(attachmentText, row.attachment, `attachment ${row.id}`),
    id: row.id,
    paper: row.paper,
  }));
}

export async function addAttachment(
  db: Kysely<BookTables>,
  command: string,
  attachment: Attachment,
): Promise<void> {
  const { id, paper, ...text } = attachment;
  const row = { id, paper, attachment: toStoredJson(attachmentText, text, `attachment ${id}`), command };
  await db.insertInto('attachment').values(row).execute();
}

/** Oldest first. */
export async function readSignedFigures(db: Kysely<BookTables>): Promise<readonly SignedFigure[]> {
  const rows = await db
    .selectFrom('signed_figure')
    .innerJoin('command', 'command.id', 'signed_figure.command')
    .selectAll('signed_figure')
    .select('command.at')
    .orderBy('signed_figure.number')
    .execute();
  return rows.map((row) => ({
    number: row.number,
    owner: row.owner,
    component: row.component,
    asOf: row.as_of,
    whose: row.whose as FigureSide,
    quantity: row.quantity,
    signedBy: row.signed_by,
    paper: row.paper,
    remark: row.remark,
    at: row.at,
  }));
}

export async function addSignedFigure(
  db: Kysely<BookTables>,
  command: string,
  figure: Omit<SignedFigure, 'number' | 'at'>,
): Promise<void> {
  const last = await db
    .selectFrom('signed_figure')
    .select((select) => select.fn.max<number | null>('number').as('number'))
    .executeTakeFirst();
  await db
    .insertInto('signed_figure')
    .values({
      number: (last?.number ?? 0) + 1,
      owner: figure.owner,
      component: figure.component,
      as_of: figure.asOf,
      whose: figure.whose,
      quantity: figure.quantity,
      signed_by: figure.signedBy,
      paper: figure.paper,
      remark: figure.remark,
      command,
    })
    .execute();
}
