import type { LiveEvent } from '@combside/contract/live';
import type { Context } from 'hono';
import { streamSSE } from 'hono/streaming';
import { arrivedAfter } from '../store/arrivals.ts';
import type { Database } from '../store/database.ts';
import { newestArrival } from '../store/newest-arrival.ts';
import { rightsOfPerson } from '../store/people.ts';
import type { Rights } from '../store/rights.ts';
import type { ArrivalsPort } from '../store/server-ports.ts';

/** Events in one reading of the database. */
const atOnce = 200;

/** A silent line keeps proxies from closing the stream, and tells us when the listener is gone. In milliseconds. */
const silence = 25_000;

export interface LivePorts {
  readonly database: Database;
  readonly arrivals: ArrivalsPort;
  /** Falls when the server stops: open streams would keep it alive. */
  readonly stopping: AbortSignal;
}

/**
 * The stream of newly stored entries for one listener, from where it left off: `Last-Event-ID`, else `?after=`, else now.
 * Rights are read again before every reading, so a grant taken away ends what is shown.
 */
export function liveStream(context: Context, ports: LivePorts, person: Rights): Response {
  const said = context.req.header('last-event-id') ?? context.req.query('after');
  context.header('cache-control', 'no-store');
  context.header('x-accel-buffering', 'no');
  return streamSSE(context, async (stream) => {
    let ring = (): void => undefined;
    let rung = true;
    const wake = (): void => {
      rung = true;
      ring();
    };
    const leave = ports.arrivals.subscribe(wake);
    stream.onAbort(wake);
    ports.stopping.addEventListener('abort', wake);
    try {
      let seen = said !== undefined && /^\d{1,15}$/.test(said) ? Number(said) : await newestArrival(ports.database);
      await stream.writeSSE({ event: 'open', id: String(seen), data: '{}' });
      while (!stream.aborted && !stream.closed && !ports.stopping.aborted) {
        if (!rung) {
          const timer = setTimeout(() => ring(), silence);
          await new Promise<void>((resolve) => {
            ring = resolve;
          });
          clearTimeout(timer);
          if (!rung) {
            await stream.write(': still here\n\n');
            continue;
          }
        }
        rung = false;
        const rights = await rightsOfPerson(ports.database, person.person);
        if (!rights) break;
        for (;;) {
          const events = await arrivedAfter(ports.database, rights, seen, atOnce);
          for (const event of events) await stream.writeSSE(asEvent(event));
          seen = events.at(-1)?.position ?? seen;
          if (events.length < atOnce || stream.aborted) break;
        }
      }
    } finally {
      leave();
      ports.stopping.removeEventListener('abort', wake);
    }
  });
}

function asEvent(event: LiveEvent): { event: string; id: string; data: string } {
  return { event: 'entry', id: String(event.position), data: JSON.stringify(event) };
}
