// What a door answers over HTTP, always under the page's policy and never kept unless it says so.
import type { ServerResponse } from 'node:http';
import { pageHeaders } from './page-policy.ts';

export interface Reply {
  readonly status: number;
  readonly type: string;
  readonly body: string | Buffer;
  readonly headers?: Readonly<Record<string, string>>;
}

export function send(response: ServerResponse, reply: Reply): void {
  response.writeHead(reply.status, {
    ...pageHeaders,
    'cache-control': 'no-store',
    ...reply.headers,
    'content-type': reply.type,
    'content-length': Buffer.byteLength(reply.body),
  });
  response.end(reply.body);
}

export function plain(status: number, text: string): Reply {
  return { status, type: 'text/plain; charset=utf-8', body: `${text}\n` };
}

export function html(body: string | Buffer): Reply {
  return { status: 200, type: 'text/html; charset=utf-8', body };
}

export function json(status: number, value: unknown): Reply {
  return { status, type: 'application/json; charset=utf-8', body: JSON.stringify(value) };
}

export const nothingThere = 'There is no such address.';
