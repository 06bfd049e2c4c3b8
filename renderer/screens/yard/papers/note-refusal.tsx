// A refusal of the core about a note, its moments by the clock of the job.
import type { ReactNode } from 'react';
import { Refused, wordsOf } from '../../../client/refused.ts';
import { useJobClock } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { withSpokenInstants } from '../../../parts/spoken-instants.ts';

/** Nothing where nothing was refused. */
export function NoteRefusal(props: { readonly error: unknown }): ReactNode {
  const clock = useJobClock();
  if (props.error === null) return null;
  const { message, hint } = wordsOf(props.error);
  const spoken = (text: string): string => withSpokenInstants(text, clock?.timeZone);
  const error = new Refused({
    code: 'refused',
    message: spoken(message),
    ...(hint === undefined ? {} : { hint: spoken(hint) }),
  });
  return <RefusalNote error={error} />;
}
