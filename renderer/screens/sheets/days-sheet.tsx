// The week plan and the day sheet on screen: printing one keeps who got it, so that the next says what has changed.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCommand, useCore } from '../../client/core.tsx';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { paperSheetAddress } from '../../parts/paper-sheets.ts';
import { printScreen } from '../../parts/printing.ts';
import { useRememberedText } from '../../parts/remembered.ts';
import { dateWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { Paper } from './paper.tsx';
import { SavePdf } from './save-pdf.tsx';

export function DaysSheet(props: { readonly kind: 'week' | 'day'; readonly id: string }): ReactNode {
  const { kind, id } = props;
  const { system } = useUnits();
  const [typed, setTyped] = useRememberedText(`given-${kind}`);
  const given = namesOf(typed);
  const sheet = useCore(`sheet.${kind}`, { id, units: system, given });
  const of = sheet.data?.of;
  return (
    <div className="screen sheets">
      <div className="sheets-tools off-paper">
        <PrintIt kind={kind} of={of} given={given} />
        <SavePdf />
        <label className="sheets-given">
          Given to
          <input
            value={typed}
            placeholder="names, with commas between"
            maxLength={400}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        {of === undefined ? null : <Days kind={kind} of={of} />}
      </div>
      {sheet.error === null ? null : <RefusalNote error={sheet.error} />}
      {sheet.data === undefined ? (
        sheet.error === null ? (
          <Waiting what="Laying out the sheet …" />
        ) : null
      ) : (
        <Paper key={`${kind} ${id}`} sheet={sheet.data} />
      )}
    </div>
  );
}

/** First kept, then printed: what is kept changes nothing on the sheet. */
function PrintIt(props: {
  readonly kind: 'week' | 'day';
  readonly of: string | undefined;
  readonly given: string[];
}): ReactNode {
  const { kind, of, given } = props;
  const job = useJob().code;
  const printed = useCommand('sheet.printed');
  const [said, setSaid] = useState('');
  const print = async (): Promise<void> => {
    if (of === undefined) return;
    try {
      const { revision } = await printed.mutateAsync({ job, kind, of, given });
      setSaid(`Revision ${revision} is kept as printed.`);
    } catch {
      // Said beside the button; without a record nothing is printed.
      return;
    }
    printScreen();
  };
  return (
    <>
      <Button className="primary" isDisabled={of === undefined} onPress={() => void print()}>
        Print
      </Button>
      <output className="sheets-said">{said}</output>
      {printed.error === null ? null : <RefusalNote error={printed.error} />}
    </>
  );
}

function Days(props: { readonly kind: 'week' | 'day'; readonly of: string }): ReactNode {
  const { kind, of } = props;
  const job = useJob().code;
  const step = kind === 'week' ? 7 : 1;
  const [before, after] = [shifted(of, -step), shifted(of, step)];
  const address = (date: string): string => paperSheetAddress(kind, `${job}@${date}`);
  return (
    <nav className="sheets-links" aria-label="Other days">
      <Link href={address(before)}>← {dateWords(before)}</Link>
      <Link href={address(after)}>{dateWords(after)} →</Link>
      {kind === 'week' ? (
        <Link href={paperSheetAddress('day', `${job}@${of}`)}>Day sheet</Link>
      ) : (
        <Link href={`/board/day-end?date=${of}`}>End this day</Link>
      )}
      <Link href="/board">Board</Link>
    </nav>
  );
}

function namesOf(typed: string): string[] {
  const names = typed
    .split(',')
    .map((name) => name.trim().slice(0, 80))
    .filter((name) => name !== '');
  return [...new Set(names)].slice(0, 20);
}

/** A date so many days later or, below zero, earlier. */
function shifted(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}
