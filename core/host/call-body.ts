// Reads the body of a call, up to a limit, and as JSON.
import type { IncomingMessage } from 'node:http';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';

/** An imported file comes inside its call; anything else is small. */
const largestFileBytes = 64 * 1024 * 1024;
const largestBytes = 4 * 1024 * 1024;

export async function readCallBody(request: IncomingMessage, name: string): Promise<Answer<unknown>> {
  const type = (request.headers['content-type'] ?? '').split(';')[0]?.trim().toLowerCase();
  if (type !== 'application/json') return refuse('bad-request', 'The content type must be application/json.');
  const limit = name === 'import.file' ? largestFileBytes : largestBytes;
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
