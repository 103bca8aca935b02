import { pictureHeader } from './picture-header.ts';
import { type Turn, uprightSize } from './turn.ts';

/** A photograph ready to be shown: its address within this page, and how what is stored lies to what is seen. */
export interface ShownPhotograph {
  readonly address: string;
  /** Pixels of the upright picture. */
  readonly width: number;
  readonly height: number;
  readonly turn: Turn;
  /** Gives the memory back. */
  close(): void;
}

/**
 * @param stored its size as the reading knows it, for formats whose header is not read here; null before it was read:
 *   then such a photograph is taken as the browser shows it
 * @throws DOMException when its bytes cannot be had any more, or are no picture
 */
export async function openPhotograph(
  photograph: Blob,
  stored: { readonly width: number; readonly height: number } | null,
): Promise<ShownPhotograph> {
  const header = pictureHeader(new Uint8Array(await photograph.slice(0, 256 * 1024).arrayBuffer()));
  const turn: Turn = header ?? { orientation: 1, ...(stored ?? (await shownSize(photograph))) };
  const address = URL.createObjectURL(photograph);
  return { address, ...uprightSize(turn), turn, close: () => URL.revokeObjectURL(address) };
}

async function shownSize(photograph: Blob): Promise<{ readonly width: number; readonly height: number }> {
  const bitmap = await createImageBitmap(photograph);
  const { width, height } = bitmap;
  bitmap.close();
  return { width, height };
}
