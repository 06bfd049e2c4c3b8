// Reads a call: its name out of the address, and its body up to a limit, as JSON.
import type { IncomingMessage } from 'node:http';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';

/** The name in `/call/NAME`, or null where the address is another. */
export function calledName(urlPath: string): string | null {
  return /^\/call\/([a-z][a-zA-Z.-]{0,60})$/u.exec(urlPath)?.[1] ?? null;
}

export async function readCallBody(request: IncomingMessage, limit: number): Promise<Answer<unknown>> {
  const type = (request.headers['content-type'] ?? '').split(';')[0]?.trim().toLowerCase();
  if (type !== 'application/json') return refuse('bad-request', 'The content type must be application/json.');
  const tooLarge = refuse('too-large', `The input is over ${limit / 1024 / 1024} MiB.`);
  // Said before reading where the length is announced, so that the answer still arrives.
  if (Number(request.headers['content-length'] ?? 0) > limit) return tooLarge;
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length;
    if (length > limit) return tooLarge;
    chunks.push(chunk);
  }
  try {
    return answer(JSON.parse(Buffer.concat(chunks).toString('utf8')));
  } catch (error) {
    return refuse('bad-json', `The input is not JSON: ${String(error)}.`);
  }
}
