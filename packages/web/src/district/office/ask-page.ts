import { TransportError } from '@combside/record/transport';

/**
 * A page of the office, asked for once and fresh: for an act that must build on what stands now.
 *
 * @param path below `/api/`
 * @throws TransportError when the office does not answer with it
 */
export async function askPage<T>(path: string): Promise<T> {
  let answer: Response;
  try {
    answer = await fetch(`/api/${path}`);
  } catch (cause) {
    throw new TransportError('no connection', path, cause);
  }
  if (!answer.ok) throw new TransportError('office fault', `${path}: ${answer.status}`);
  return (await answer.json()) as T;
}
