/** What a HEIF file (ISO/IEC 23008-12) says of its main picture before anything is decoded. */
export interface HeifHeader {
  /** Largest width × height that any picture of the file states. */
  readonly pixels: number;
  /** Colour profiles (ICC) of the file; all pictures of a photograph bear the same one. */
  readonly profile: Uint8Array | null;
  /** Primaries and transfer curve as numbers of ITU-T H.273; null where none are stated. */
  readonly coded: { readonly primaries: number; readonly transfer: number } | null;
}

interface Box {
  readonly type: string;
  readonly body: Uint8Array;
}

/** Reads the item properties of a HEIF file; an item that says nothing leaves 0 pixels. */
export function heifHeaderOf(bytes: Uint8Array): HeifHeader {
  const meta = inside(bytes).find(({ type }) => type === 'meta');
  const within = (body: Uint8Array | undefined, wanted: string) =>
    body && inside(body).find(({ type }) => type === wanted)?.body;
  // `meta` is a full box: its version and flags stand before what it holds.
  const properties = within(within(meta?.body.subarray(4), 'iprp'), 'ipco');
  const boxes = properties ? inside(properties) : [];
  const colours = boxes.filter(({ type }) => type === 'colr').map(({ body }) => body);
  const profile = colours.find((body) => /^(prof|rICC)$/.test(textAt(body, 0)));
  const coded = colours.find((body) => textAt(body, 0) === 'nclx' && body.length >= 10);
  return {
    pixels: Math.max(0, ...boxes.filter(({ type }) => type === 'ispe').map(areaOf)),
    profile: profile ? profile.subarray(4) : null,
    coded: coded
      ? { primaries: viewOf(coded).getUint16(4), transfer: viewOf(coded).getUint16(6) }
      : null,
  };
}

/** The boxes that follow each other in some bytes (ISO/IEC 14496-12); a broken one ends the list. */
function inside(bytes: Uint8Array): readonly Box[] {
  const found: Box[] = [];
  const view = viewOf(bytes);
  for (let at = 0; at + 8 <= bytes.length; ) {
    const short = view.getUint32(at);
    const long = short === 1 && at + 16 <= bytes.length;
    const size = long ? Number(view.getBigUint64(at + 8)) : short || bytes.length - at;
    const head = long ? 16 : 8;
    if (size < head) break;
    found.push({ type: textAt(bytes, at + 4), body: bytes.subarray(at + head, at + size) });
    at += size;
  }
  return found;
}

function areaOf({ body }: Box): number {
  return body.length < 12 ? 0 : viewOf(body).getUint32(4) * viewOf(body).getUint32(8);
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function textAt(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}
