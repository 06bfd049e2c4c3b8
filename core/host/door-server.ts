// The HTTP server under a door: on one address of this machine and no other, with every failed request answered, and
// closed without waiting for those who only keep their connection open.
import { createServer } from 'node:http';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { plain, send } from './door-replies.ts';
import type { Reply } from './door-replies.ts';

export interface DoorServer {
  readonly port: number;
  readonly close: () => Promise<void>;
}

export interface DoorServerOptions {
  readonly address: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Null where the response is kept open and written elsewhere. */
  readonly reply: (request: IncomingMessage, response: ServerResponse, port: number) => Promise<Reply | null>;
  /** So that strangers cannot hold the door: how many at once, and how long a request may take to come in. */
  readonly limits?: { readonly connections: number; readonly requestMs: number };
}

/** Rejects where the address is not of this machine or the port is taken. */
export async function openDoorServer(options: DoorServerOptions): Promise<DoorServer> {
  const { address, limits } = options;
  const server = createServer(
    limits === undefined
      ? {}
      : {
          requestTimeout: limits.requestMs,
          headersTimeout: limits.requestMs,
          connectionsCheckingInterval: 1000,
        },
    (request, response) => {
      options
        .reply(request, response, port)
        .then((reply) => (reply === null ? undefined : send(response, reply)))
        .catch((error: unknown) => {
          console.error(`regang: a request failed: ${String(error)}`);
          if (response.headersSent) response.destroy();
          else send(response, plain(500, 'The request failed; the terminal says why.'));
        });
    },
  );
  if (limits !== undefined) server.maxConnections = limits.connections;
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port: options.port, host: address, exclusive: true }, resolve);
  });
  const { port } = server.address() as AddressInfo;

  return {
    port,
    close: async () => {
      const closed = new Promise<void>((resolve) => {
        server.close(() => resolve());
      });
      server.closeAllConnections();
      await closed;
    },
  };
}
