// The job that the screens are about: the one named in the address, else the one last looked at, else
// the first of the book.
import { createContext, type ReactNode, useContext } from 'react';
import type { Output } from '../client/core.tsx';

export type Job = Output<'book.state'>['jobs'][number];

const JobContext = createContext<Job | null>(null);

/** Screens that need a job are shown only where there is one. */
export function useJob(): Job {
  const job = useContext(JobContext);
  if (job === null) throw new Error('A screen that needs a job was shown without one.');
  return job;
}

export function JobProvider(props: { readonly job: Job; readonly children: ReactNode }): ReactNode {
  return <JobContext value={props.job}>{props.children}</JobContext>;
}
