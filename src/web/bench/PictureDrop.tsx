import { type DragEvent, useId, useState } from 'react';
import { ROLES, type Role, rolesOf } from './newCopy.ts';

/** A picture that was dropped or chosen, and what it shows. */
export interface Dropped {
  readonly file: File;
  readonly role: Role;
}

interface Props {
  readonly pictures: readonly Dropped[];
  /** Roles of pictures that are kept already. */
  readonly taken?: readonly Role[];
  readonly change: (pictures: readonly Dropped[]) => void;
}

const KINDS = 'image/*,.heic,.heif,.avif,.tif,.tiff';

/** A place to drop pictures on, or to choose them, with what each of them shows. */
export function PictureDrop({ pictures, taken = [], change }: Props) {
  const id = useId();
  const [over, setOver] = useState(false);
  const add = (files: readonly File[]) => {
    const all = [...pictures.map(({ file }) => file), ...files];
    const roles = rolesOf(
      all.map(({ name }) => name),
      taken,
    );
    change(all.map((file, k) => ({ file, role: pictures[k]?.role ?? roles[k] ?? '' })));
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    add([...event.dataTransfer.files]);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: what can be dropped here can be chosen by the field within
    <div
      className={over ? 'drop over' : 'drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <label htmlFor={id} className="why">
        Drop pictures of front and back here, or choose them
      </label>
      <input
        id={id}
        type="file"
        multiple
        accept={KINDS}
        onChange={(event) => {
          add([...(event.target.files ?? [])]);
          event.target.value = '';
        }}
      />
      <ul className="rows">
        {pictures.map((one, k) => (
          <Row
            key={`${one.file.name}${one.file.size}${one.file.lastModified}`}
            picture={one}
            free={(role) => !taken.includes(role)}
            set={(role) => change(pictures.map((old, at) => (at === k ? { ...old, role } : old)))}
            leave={() => change(pictures.filter((_, at) => at !== k))}
          />
        ))}
      </ul>
    </div>
  );
}

interface RowProps {
  readonly picture: Dropped;
  readonly free: (role: Role) => boolean;
  readonly set: (role: Role) => void;
  readonly leave: () => void;
}

function Row({ picture: { file, role }, free, set, leave }: RowProps) {
  return (
    <li>
      <label className="dropped">
        <span>{file.name} shows</span>
        <select value={role} onChange={(event) => set(event.target.value)}>
          <option value="">nothing that is wanted</option>
          {ROLES.filter(([one]) => free(one)).map(([one, words]) => (
            <option key={one} value={one}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="plain" onClick={leave} aria-label={`Leave out ${file.name}`}>
        leave it out
      </button>
    </li>
  );
}

/** What is wrong with the pictures, in a sentence; empty where nothing is. */
export function wrongPictures(pictures: readonly Dropped[]): string {
  const wanted = pictures.map(({ role }) => role).filter(Boolean);
  const twice = wanted.find((role, k) => wanted.indexOf(role) !== k);
  if (!twice) return '';
  const words = ROLES.find(([role]) => role === twice)?.[1] ?? twice;
  return `Two pictures are said to show ${words}.`;
}
