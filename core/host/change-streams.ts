// The open event streams of a local door: they carry the news that the book changed, and they tell how
// many pages are still there.
import type { ServerResponse } from 'node:http';

export interface ChangeStreams {
  readonly add: (response: ServerResponse) => void;
  readonly send: (changeNumber: number) => void;
  readonly endAll: () => void;
}

/** @param onCount called with the number of open streams whenever it changes */
export function createChangeStreams(onCount: (open: number) => void): ChangeStreams {
  const open = new Set<ServerResponse>();

  function add(response: ServerResponse): void {
    response.writeHead(200, {
      'content-type': 'text/event-stream',
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    });
    response.write('retry: 1000\n\n');
    open.add(response);
    onCount(open.size);
    response.on('close', () => {
      open.delete(response);
      onCount(open.size);
    });
  }

  return {
    add,
    send: (changeNumber) => {
      for (const response of open)
        response.write(`event: changed\ndata: ${JSON.stringify({ changeNumber })}\n\n`);
    },
    endAll: () => {
      for (const response of open) response.end();
    },
  };
}
