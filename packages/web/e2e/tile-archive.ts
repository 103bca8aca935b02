/**
 * The smallest archive of tiles: one picture for the whole world at zoom 0, nothing compressed.
 *
 * Source: PMTiles specification, version 3 (from memory): header of 127 bytes, little endian; the directory as varints
 * (count, steps of tile numbers, run lengths, lengths, offsets plus one).
 *
 * @param picture bytes of a PNG
 */
export function archiveOfOneTile(picture: Buffer): Buffer {
  const varint = (value: number): number[] => (value < 128 ? [value] : [(value & 127) | 128, ...varint(value >>> 7)]);
  const directory = Buffer.from([1, 0, 1, ...varint(picture.length), 1].flat());
  const metadata = Buffer.from('{}');
  const header = Buffer.alloc(127);
  header.write('PMTiles', 0, 'latin1');
  header.writeUInt8(3, 7);
  const parts = [127, directory.length, 127 + directory.length, metadata.length, 0, 0];
  const data = 127 + directory.length + metadata.length;
  for (const [place, value] of [...parts, data, picture.length, 1, 1, 1].entries()) {
    header.writeBigUInt64LE(BigInt(value), 8 + 8 * place);
  }
  const [clustered, uncompressed, png] = [1, 1, 2];
  header.writeUInt8(clustered, 96);
  header.writeUInt8(uncompressed, 97);
  header.writeUInt8(uncompressed, 98);
  header.writeUInt8(png, 99);
  // Zoom 0 to 0; then the corners of the world and its middle, in ten-millionths of a degree.
  for (const [place, degrees] of [-180, -85, 180, 85].entries()) header.writeInt32LE(degrees * 1e7, 102 + 4 * place);
  return Buffer.concat([header, directory, metadata, picture]);
}
