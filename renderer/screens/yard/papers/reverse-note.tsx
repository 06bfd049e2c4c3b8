// Taking a booked note back as a whole, with why.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { NoteRefusal } from './note-refusal.tsx';
import type { Note } from './note-words.ts';

export function ReverseNote(props: { readonly note: Note }): ReactNode {
  const { note } = props;
  const [remark, setRemark] = useState('');
  const reverse = useCommand('note.reverse');
  return (
    <form
      className="reversal note-reversal"
      onSubmit={(event) => {
        event.preventDefault();
        if (!reverse.isPending) reverse.mutate({ note: note.id, remark: remark.trim() });
      }}
    >
      <label className="field">
        <span className="field-label">Reverse the whole note, because</span>
        <input value={remark} maxLength={400} required onChange={(event) => setRemark(event.target.value)} />
      </label>
      <button type="submit" disabled={remark.trim() === ''} aria-disabled={reverse.isPending}>
        Reverse {note.number}
      </button>
      <p className="soft">What it moved stays written; the opposite is booked beside it, all or nothing.</p>
      <NoteRefusal error={reverse.error} />
    </form>
  );
}
