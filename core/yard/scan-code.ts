// What a tag, a ticket or a sheet says to a scanner: RG:KIND:JOB:CODE. A scanner types it like a keyboard, perhaps with
// blanks or a line end around it, and on a keyboard of another country; so only letters without accents, digits and a
// few signs stand in it as they are, and everything else as a percent sign and two hexadecimal digits a byte.
import { answer, type Answer, refuse } from '../answer.ts';

export const scanKinds = ['gang', 'container', 'ticket', 'count', 'component', 'location'] as const;
export type ScanKind = (typeof scanKinds)[number];

export interface Scanned {
  readonly kind: ScanKind;
  /** Null where it belongs to no job. */
  readonly job: string | null;
  readonly code: string;
}

const mark = 'RG';
const letters: Readonly<Record<ScanKind, string>> = {
  gang: 'G',
  container: 'C',
  ticket: 'S',
  count: 'N',
  component: 'K',
  location: 'L',
};
const named: Readonly<Record<ScanKind, string>> = {
  gang: 'a gang',
  container: 'a container',
  ticket: 'a strip ticket',
  count: 'a count',
  component: 'a component',
  location: 'a location',
};

export function scanCode({ kind, job, code }: Scanned): string {
  return [mark, letters[kind], written(job ?? ''), written(code)].join(':');
}

/** Refusal `not-a-scan-code`: what was read, and what may have garbled it. */
export function readScanCode(text: string): Answer<Scanned> {
  // Some scanners say first which kind of code they read: ]Q and a digit for a QR code (from memory, ISO/IEC 15424).
  const bare = text.trim().replace(/^\]Q\d/u, '');
  const [first, letter, job, code, ...rest] = bare.split(':');
  const kind = scanKinds.find((each) => letters[each] === letter);
  if (first !== mark || kind === undefined || job === undefined || code === undefined || rest.length > 0)
    return notRead(text);
  const [readJob, readCode] = [readBack(job), readBack(code)];
  if (readJob === undefined || readCode === undefined || readCode === '') return notRead(text);
  return answer({ kind, job: readJob === '' ? null : readJob, code: readCode });
}

/** What was scanned belongs to this job or to none; else refusal `other-job`, with both jobs named. */
export function scannedInJob(scanned: Scanned, job: string): Answer<Scanned> {
  if (scanned.job === null || scanned.job === job) return answer(scanned);
  const message = `This is ${named[scanned.kind]} of job ${scanned.job}, ${scanned.code}; here is job ${job}.`;
  return refuse('other-job', message, {
    hint: `Maybe it came over from job ${scanned.job} without a note: then it is entered as ours at another job, or as theirs here.`,
  });
}

function written(part: string): string {
  return encodeURIComponent(part.toWellFormed())
    .replaceAll('%2F', '/')
    .replaceAll(/[!~*'()]/gu, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);
}

function readBack(part: string): string | undefined {
  // What never stands in a code as it is was changed on the way: a keyboard of another country, say.
  if (!/^[A-Za-z0-9\-_./%]*$/u.test(part)) return undefined;
  try {
    return decodeURIComponent(part);
  } catch {
    return undefined;
  }
}

function notRead(text: string) {
  const shown = text.trim().slice(0, 60);
  if (shown === '') return refuse('not-a-scan-code', 'Nothing was read.', { hint: 'Maybe scan it again.' });
  const bent = shown.startsWith('rg:')
    ? 'Maybe capital letters are locked on this keyboard.'
    : 'Maybe it is the mark of somebody else, or the scanner types for a keyboard of another country.';
  return refuse('not-a-scan-code', `“${shown}” is none of our tags, tickets or sheets.`, { hint: bent });
}
