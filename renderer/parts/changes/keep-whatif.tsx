// Keeping changes as a what-if under a name, without carrying them out: to be compared later.
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCommand } from '../../client/core.tsx';
import { wordsOf } from '../../client/refused.ts';
import type { PlanChange } from './change-text.ts';

export function KeepWhatif(props: {
  readonly job: string;
  readonly changes: readonly PlanChange[];
  /** What stands in the field at first. */
  readonly words: string;
  readonly onKept?: (id: string) => void;
}): ReactNode {
  const { job, changes, words, onKept } = props;
  const [name, setName] = useState<string | null>(null);
  const [kept, setKept] = useState<{ readonly id: string; readonly changes: readonly PlanChange[] } | null>(
    null,
  );
  const keep = useCommand('whatif.keep');
  const field = useRef<HTMLInputElement>(null);
  const isOpen = name !== null;
  useEffect(() => {
    if (isOpen) field.current?.select();
  }, [isOpen]);
  const send = (): void => {
    if (name === null) return;
    keep.mutate(
      { job, name, changes: [...changes] },
      {
        onSuccess: ({ id }) => {
          setName(null);
          setKept({ id, changes });
          onKept?.(id);
        },
      },
    );
  };
  if (kept !== null && kept.changes === changes)
    return (
      <p className="keep-whatif">
        Kept.{' '}
        <Link href={`/board/what-if?one=now&other=${encodeURIComponent(kept.id)}`}>Look at both plans</Link>
      </p>
    );
  if (name === null)
    return (
      <p className="keep-whatif">
        <Button className="quiet" onPress={() => setName(words.slice(0, 80))}>
          Keep as a what-if
        </Button>
      </p>
    );
  return (
    <form
      className="keep-whatif"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <label>
        <span>Name of the what-if</span>
        <input
          ref={field}
          value={name}
          maxLength={80}
          aria-invalid={keep.error !== null}
          onChange={(event) => {
            setName(event.target.value);
            keep.reset();
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            event.stopPropagation();
            event.preventDefault();
            setName(null);
          }}
        />
      </label>
      <Button type="submit" isDisabled={name.trim() === '' || keep.isPending}>
        Keep what-if
      </Button>
      {keep.error === null ? null : (
        <span className="problem" role="alert">
          {wordsOf(keep.error).message} {wordsOf(keep.error).hint}
        </span>
      )}
    </form>
  );
}
